/* Setting, lifting and filling, as the plot's file then says it. */
#include "plot/edit/plants_lay.h"
#include "base/memory.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#define ROSE "plant r \"Rose\"\n"
#define SEDGE "plant s \"Sedge\"\n"

static const char *const garden[] = { "bb.pp", "bb.bb", "ll.S.", NULL };

static void plot_begin(struct plot *plot, enum mirror_kind kind, const char *lines)
{
	plot_from_rows(plot, garden);
	plot_add_lines(plot, lines);
	block_set(&plot->details.head, HEAD_MIRROR,
		(struct value){ .set = true, .as.number = kind });
}

/* What follows the ground, and ends the plot. */
static void check_end(struct plot *plot, const char *expected)
{
	plot_check_later(plot, expected);
	plot_fini(plot);
}

static void check_planted(struct planted planted, int changed, bool outside, bool is_barred)
{
	ck_assert_int_eq(planted.changed, changed);
	ck_assert_int_eq(planted.outside, outside);
	ck_assert_int_eq(planted.is_barred, is_barred);
}

START_TEST(plants_stand_on_beds_lawns_and_open_ground)
{
	ck_assert(class_takes_plant(CLASS_BED) && class_takes_plant(CLASS_LAWN));
	ck_assert(class_takes_plant(CLASS_OPEN));
	ck_assert(!class_takes_plant(CLASS_PATH) && !class_takes_plant(CLASS_FIXTURE));
}
END_TEST

START_TEST(a_specimen_is_set_once_with_its_image)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE SEDGE);
	check_planted(plants_set(&plot, 'r', (struct place){ 0, 1 }), 2, false, false);
	check_planted(plants_set(&plot, 'r', (struct place){ 4, 1 }), 0, false, false);
	check_planted(plants_set(&plot, 'r', (struct place){ 2, 0 }), 1, false, false);
	check_end(&plot, ROSE "  at 0,1\n  at 4,1\n  at 2,0\n" SEDGE);
}
END_TEST

START_TEST(one_of_another_kind_makes_room)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_OFF, ROSE "  at 0,0\n  at 1,0\n" SEDGE);
	check_planted(plants_set(&plot, 's', (struct place){ 0, 0 }), 2, false, false);
	check_end(&plot, ROSE "  at 1,0\n" SEDGE "  at 0,0\n");
}
END_TEST

/* The image of 0,0 is path, that of 1,2 a fixture; beside an axis at the left edge all images of
 * column 2 and on are beyond the plan. */
START_TEST(no_image_is_set_on_hard_ground_or_beyond_the_plan)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_set(&plot, 'r', (struct place){ 0, 0 }), 1, false, true);
	check_planted(plants_set(&plot, 'r', (struct place){ 1, 2 }), 1, false, true);
	plot_set(&plot, 0, HEAD_AXIS, "1,3");
	check_planted(plants_set(&plot, 'r', (struct place){ 2, 1 }), 1, true, false);
	check_end(&plot, ROSE "  at 0,0\n  at 1,2\n  at 2,1\n");
}
END_TEST

START_TEST(what_is_lifted_goes_with_the_images_of_its_kind)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE "  at 0,1\n  at 4,1\n  at 0,2\n" SEDGE
		"  at 4,1\n  at 0,2\n");
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 1 }), 2);
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 1 }), 0);
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 2 }), 2);
	check_end(&plot, ROSE SEDGE "  at 4,1\n");
}
END_TEST

START_TEST(a_bed_and_its_image_are_filled)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 0, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_FRONT, true), 1, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 0 }, BAND_WHOLE, false), 1, false,
		true);
	check_end(&plot, ROSE "  drift 1,1 back\n  drift 3,1 back\n  drift b front\n"
		"  drift 0,0 whole\n");
}
END_TEST

/* Mirrored top to bottom about the middle of rows 0 and 1 the left bed is its own image. */
START_TEST(a_bed_that_is_its_own_image_is_filled_once)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_TOP_BOTTOM, ROSE);
	plot_set(&plot, 0, HEAD_AXIS, "5,2");
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 1 }, BAND_WHOLE, false), 1, false,
		false);
	check_end(&plot, ROSE "  drift 0,1 whole\n");
}
END_TEST

START_TEST(a_bed_is_filled_once_from_whatever_cell)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 4, 1 }, BAND_BACK, false), 0, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 4, 1 }, BAND_FRONT, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, true), 1, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 1 }, BAND_BACK, false), 0, false,
		false);
	check_end(&plot, ROSE "  drift 4,1 front\n  drift 0,1 front\n  drift b back\n");
}
END_TEST

START_TEST(a_band_is_emptied_with_its_images)
{
	static const struct drift one = { .at = { 3, 1 }, .band = BAND_BACK };
	static const struct drift all = { .letter = 'b', .band = BAND_FRONT };
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE "  drift 1,1 back\n  drift b front\n"
		"  drift 3,1 back\n  drift 1,1 front\n");
	ck_assert_int_eq(plants_empty(&plot, 'r', one), 2);
	ck_assert_int_eq(plants_empty(&plot, 'r', one), 0);
	ck_assert_int_eq(plants_empty(&plot, 'r', all), 1);
	check_end(&plot, ROSE "  drift 1,1 front\n");
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

enum { SIDE = 8, CELLS = SIDE * SIDE };

/* Which cells have which band filled, and which region each is of: cells take the least number of
 * their neighbours of the same letter until none changes any more. */
struct filled {
	bool has[BANDS][CELLS];
};

static void regions_find(const struct ground *ground, int *region)
{
	int count = ground->columns * ground->rows;
	bool is_changed = true;

	for (int i = 0; i < count; i++)
		region[i] = i;
	while (is_changed) {
		is_changed = false;
		for (int i = 0; i < count; i++)
			for (int j = 0; j < count; j++) {
				int x = i % ground->columns - j % ground->columns;
				int y = i / ground->columns - j / ground->columns;

				if (x * x + y * y == 1 && ground->cells[i] == ground->cells[j] &&
					region[j] < region[i]) {
					region[i] = region[j];
					is_changed = true;
				}
			}
	}
}

static struct filled filled_of(const struct plant *plant, const struct ground *ground,
	const int *region)
{
	struct filled filled = { { { false } } };

	for (size_t i = 0; i < plant->drift_count; i++) {
		const struct drift *drift = &plant->drifts[i];
		int at = drift->at.y * ground->columns + drift->at.x;

		for (int j = 0; j < ground->columns * ground->rows; j++)
			filled.has[drift->band][j] |= drift->letter ?
				ground->cells[j] == drift->letter : region[j] == region[at];
	}
	return filled;
}

/* What is to be filled after it, and how many drifts it takes. */
static struct planted fill_expected(const struct plot *plot, struct filled *filled,
	const int *region, struct place at, enum band band)
{
	const struct ground *ground = &plot->ground;
	char bed = ground_cell(ground, at.x, at.y);
	struct mirror mirror = mirror_of(plot);
	struct planted planted = { 0, false, false };
	struct place images[IMAGES_MOST];

	for (int n = mirror_cells(&mirror, at.x, at.y, images); n > 0; n--) {
		struct place to = images[n - 1];
		int cell = to.y * ground->columns + to.x;

		if (!ground_holds(ground, to.x, to.y)) {
			planted.outside = true;
			continue;
		}
		planted.is_barred |= ground->cells[cell] != bed;
		if (ground->cells[cell] != bed || filled->has[band][cell])
			continue;
		planted.changed++;
		for (int i = 0; i < ground->columns * ground->rows; i++)
			filled->has[band][i] |= region[i] == region[cell];
	}
	return planted;
}

static bool has_all(const struct plant *plant, char bed, enum band band)
{
	bool has = false;

	for (size_t i = 0; i < plant->drift_count; i++)
		has |= plant->drifts[i].letter == bed && plant->drifts[i].band == band;
	return has;
}

/* Of single beds of the letter, and of all others; with the band or without it. */
static int drifts_of(const struct plant *plant, const struct ground *ground, char bed,
	enum band band, bool is_of_them)
{
	int count = 0;

	for (size_t i = 0; i < plant->drift_count; i++) {
		const struct drift *drift = &plant->drifts[i];

		count += is_of_them == (drift->letter == 0 && drift->band == band &&
			ground_cell(ground, drift->at.x, drift->at.y) == bed);
	}
	return count;
}

static void check_filling(struct plot *plot, struct random *random, const int *region)
{
	struct plant *plant = &plot->details.plants.items[random_below(random, 2)];
	const struct plant *other = plot->details.plants.items +
		(plant == plot->details.plants.items);
	const struct ground *ground = &plot->ground;
	struct place at = { random_below(random, ground->columns),
		random_below(random, ground->rows) };
	enum band band = (enum band)random_below(random, BANDS);
	char bed = ground_cell(ground, at.x, at.y);
	bool is_all = random_below(random, 4) == 0, had = has_all(plant, bed, band);
	struct filled expected = filled_of(plant, ground, region), now;
	size_t others = other->drift_count;
	int rest = drifts_of(plant, ground, bed, band, false);
	struct planted planted = { !had, false, false }, got;

	if (is_all)
		for (int i = 0; i < ground->columns * ground->rows; i++)
			expected.has[band][i] |= ground->cells[i] == bed;
	else
		planted = fill_expected(plot, &expected, region, at, band);
	got = plants_fill(plot, plant->letter, at, band, is_all);
	check_planted(got, (int)planted.changed, planted.outside, planted.is_barred);
	now = filled_of(plant, ground, region);
	ck_assert_mem_eq(&now, &expected, sizeof now);
	ck_assert_uint_eq(other->drift_count, others);
	if (is_all && !had) {
		ck_assert_int_eq(drifts_of(plant, ground, bed, band, true), 0);
		ck_assert_int_eq(drifts_of(plant, ground, bed, band, false), rest + 1);
	}
}

START_TEST(whatever_is_filled_each_bed_has_a_band_once)
{
	for (uint64_t seed = 0; seed < 150; seed++) {
		struct random random = { seed };
		struct plot plot;
		int region[CELLS];

		plot_at_random(&plot, &random, SIDE, "bbcd");
		block_set(&plot.details.head, HEAD_MIRROR,
			(struct value){ .set = true, .as.number = random_below(&random, 5) });
		if (random_below(&random, 2))
			block_set(&plot.details.head, HEAD_AXIS, (struct value){ .set = true,
				.as.place = { random_between(&random, 1,
					2 * plot.ground.columns - 1),
				random_between(&random, 1, 2 * plot.ground.rows - 1) } });
		plants_add(&plot.details.plants, 'r', memory_string("Rose"));
		plants_add(&plot.details.plants, 's', memory_string("Sedge"));
		regions_find(&plot.ground, region);
		for (int i = 0; i < 12; i++)
			check_filling(&plot, &random, region);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plants lay");
	TCase *specimens = suite_case(suite, "specimens"), *drifts = suite_case(suite, "drifts");

	tcase_add_test(specimens, plants_stand_on_beds_lawns_and_open_ground);
	tcase_add_test(specimens, a_specimen_is_set_once_with_its_image);
	tcase_add_test(specimens, one_of_another_kind_makes_room);
	tcase_add_test(specimens, no_image_is_set_on_hard_ground_or_beyond_the_plan);
	tcase_add_test(specimens, what_is_lifted_goes_with_the_images_of_its_kind);
	tcase_add_test(drifts, a_bed_and_its_image_are_filled);
	tcase_add_test(drifts, a_bed_that_is_its_own_image_is_filled_once);
	tcase_add_test(drifts, a_bed_is_filled_once_from_whatever_cell);
	tcase_add_test(drifts, a_band_is_emptied_with_its_images);
	tcase_add_test(drifts, whatever_is_filled_each_bed_has_a_band_once);
	return suite;
}
