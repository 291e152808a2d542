/* Parts of gardens of which one thing is otherwise than in the plot: told in other units, by more
 * people, with less allowed for. */
#include "report/text/print.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

#define PART(name) (1u << PART_##name)
#define ALL_PARTS (PARTS_ALL | PART(SETOUT))

/* letter: of the entry; 0: the head or allow. */
struct change {
	char letter;
	enum attribute attribute;
	const char *value;
};

enum { CHANGES_MOST = 12 };

#define WATER(month, depth) { 0, ALLOW_WATER_##month, depth }
#define EACH_MONTH(depth) { WATER(JANUARY, depth), WATER(FEBRUARY, depth), WATER(MARCH, depth), \
	WATER(APRIL, depth), WATER(MAY, depth), WATER(JUNE, depth), WATER(JULY, depth), \
	WATER(AUGUST, depth), WATER(SEPTEMBER, depth), WATER(OCTOBER, depth), \
	WATER(NOVEMBER, depth), WATER(DECEMBER, depth) }

static const struct {
	const char *garden;
	struct change changes[CHANGES_MOST]; /* up to one without a value */
	unsigned parts;
} variants[] = {
	{ "tests/plots/gallery", { { 0, HEAD_UNITS, "metric" } }, ALL_PARTS },
	{ "tests/plots/falling", { { 0, HEAD_UNITS, "metric" } }, ALL_PARTS },
	{ "plots/well-yard", { { 0, HEAD_UNITS, "metric" } }, ALL_PARTS },
	{ "tests/plots/rounds", { { 0, HEAD_UNITS, "imperial" } }, ALL_PARTS },
	{ "tests/plots/turned", { { 0, HEAD_UNITS, "metric" }, { 0, HEAD_MIRROR, "left-right" } },
		PART(FRONT) | PART(WALLS) },
	{ "tests/plots/months", { { 0, HEAD_UNITS, "imperial" }, { 0, ALLOW_WATER_RUNS, "1" } },
		PART(FRONT) | PART(WATERING) | PART(PLANTING) },
	{ "tests/plots/months", { { 0, ALLOW_WATER_RUNS, "3" }, { 0, ALLOW_SUPPLY, "150 L/h" } },
		PART(WATERING) },
	{ "tests/plots/months", EACH_MONTH("0 mm"), PART(WATERING) | PART(PLANTING) },
	{ "tests/plots/months", EACH_MONTH("20 mm"), PART(WATERING) },
	{ "plots/court", { { 0, ALLOW_CREW, "2" }, { 0, ALLOW_DAY, "1" } },
		PART(FRONT) | PART(PROGRAMME) },
	{ "plots/court", { { 0, ALLOW_TAMPER, "hand" }, { 0, ALLOW_SUBSOIL, "clay" },
		{ 0, ALLOW_TOPSOIL, "6 in" } },
		PART(PROGRAMME) | PART(DIG) | PART(ASSUMED) },
	{ "plots/court", { { 0, ALLOW_BEADS, "1" }, { 'b', BED_JOINT, "1/2 in" } }, PART(WALLS) },
	{ "plots/rope-walk", { { 'b', BED_CAP, "48 in x 8 in x 2 in" } }, PART(WALLS) },
	{ "plots/rope-walk", { { 'b', BED_CAP, "8 in x 8 in x 2 in" } }, PART(WALLS) },
	{ "plots/rope-walk", { { 'b', BED_BLOCK, "7 in x 4 in x 4 in" } }, PART(WALLS) },
	{ "plots/rope-walk", { { 0, ALLOW_LINER_LENGTH, "10 ft" }, { 0, ALLOW_FABRIC_LENGTH,
		"10 ft" }, { 0, ALLOW_EDGING_PIECE, "3 ft" } }, PART(DIG) | PART(FILL) },
	{ "plots/slope", { { 0, ALLOW_FENCE_GAP, "1 in" }, { 0, ALLOW_POST_STOCK, "1 in" } },
		PART(FENCE) | PART(LEVELS) },
};
enum { VARIANTS = sizeof variants / sizeof *variants };

static struct garden garden;
static struct text paper;

static void setup(void)
{
	paper = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&paper);
	garden_fini(&garden);
}

START_TEST(parts_of_variants_print_as_they_did)
{
	const struct change *changes = variants[_i].changes;
	const char *name = strrchr(variants[_i].garden, '/') + 1;
	char file[80], golden[80];

	snprintf(file, sizeof file, "%s.plot", variants[_i].garden);
	garden_file(&garden, file);
	for (int i = 0; i < CHANGES_MOST && changes[i].value; i++)
		plot_set(&garden.plot, changes[i].letter, changes[i].attribute, changes[i].value);
	garden_count(&garden);
	for (int part = 0; part < PARTS; part++)
		if (variants[_i].parts >> part & 1)
			garden_print(&garden, &paper, "variant.plot", 1u << part);
	snprintf(golden, sizeof golden, "variant-%d-%s.txt", _i + 1, name);
	golden_check(golden, paper.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden variants");
	TCase *parts = suite_case(suite, "parts");

	tcase_add_checked_fixture(parts, setup, teardown);
	tcase_add_loop_test(parts, parts_of_variants_print_as_they_did, 0, VARIANTS);
	return suite;
}
