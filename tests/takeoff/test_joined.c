/* What paths and fixtures touch, on random gardens: side by side of every cell. */
#include "takeoff/walks/joined.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "survey/way.h"

#include <stdlib.h>

enum { MOST = 9, REGIONS_MOST = MOST * MOST };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* What is true of a path together with those that touch it, or of a fixture. */
struct facts {
	int first; /* of the paths that touch */
	bool is_reached, leads, is_open;
};

struct looking {
	struct fence_map fences;
	struct house_map houses;
	unsigned char *way;
	struct facts facts[REGIONS_MOST];
};

static const struct survey *survey(void)
{
	return &garden.takeoff.survey;
}

static int region_at(int x, int y)
{
	return ground_holds(&garden.plot.ground, x, y) ? survey_region_at(survey(), x, y) :
		NO_REGION;
}

static enum plot_class class_at(int x, int y)
{
	return ground_holds(&garden.plot.ground, x, y) ? plot_class_of(&garden.plot,
		ground_cell(&garden.plot.ground, x, y)) : CLASS_BOUNDARY;
}

/* From a cell of a path or a fixture to what lies beside it. */
static void look_across(struct looking *l, int x, int y, int across, int down)
{
	enum plot_class here = class_at(x, y), beyond = class_at(x + across, y + down);
	struct place at = { x - (across < 0), y - (down < 0) };
	struct facts *facts = &l->facts[region_at(x, y)];
	bool has_gate = fence_map_at(&l->fences, at.x, at.y) & (down ? GATE_BELOW : GATE_RIGHT);

	if (here == CLASS_FIXTURE) {
		facts->is_open |= beyond != CLASS_FIXTURE && beyond != CLASS_BED;
		facts->is_reached |= beyond == CLASS_PATH &&
			!fence_map_is_shut(&l->fences, at, down != 0);
		return;
	}
	facts->leads |= has_gate || (beyond != CLASS_PATH && beyond != CLASS_OPEN) ||
		house_map_at(&l->houses, x, y) ||
		house_map_at(&l->houses, x + across, y + down);
	facts->is_reached |= l->way[y * survey()->columns + x];
}

/* Of two paths that touch both have the facts of either. Returns whether that changes any. */
static bool share(struct facts *one, struct facts *other)
{
	struct facts both = { one->first < other->first ? one->first : other->first,
		one->is_reached || other->is_reached, one->leads || other->leads, false };
	bool changes = both.first != one->first || both.first != other->first ||
		both.is_reached != one->is_reached || both.is_reached != other->is_reached ||
		both.leads != one->leads || both.leads != other->leads;

	*one = *other = both;
	return changes;
}

static bool share_all(struct looking *l)
{
	bool changes = false;

	for (int y = 0; y < survey()->rows; y++)
		for (int x = 0; x < survey()->columns; x++)
			for (int i = 0; i < 2; i++)
				if (class_at(x, y) == CLASS_PATH &&
					class_at(x + i, y + !i) == CLASS_PATH)
					changes |= share(&l->facts[region_at(x, y)],
						&l->facts[region_at(x + i, y + !i)]);
	return changes;
}

static void look(struct looking *l)
{
	for (int i = 0; i < survey()->region_count; i++)
		l->facts[i] = (struct facts){ .first = i };
	for (int y = 0; y < survey()->rows; y++)
		for (int x = 0; x < survey()->columns; x++)
			for (int i = 0; i < 4 && (class_at(x, y) == CLASS_PATH ||
				class_at(x, y) == CLASS_FIXTURE); i++)
				look_across(l, x, y, (i - 1) % 2, (2 - i) % 2);
	while (share_all(l))
		;
}

/* -1: there is no such snag of the region. */
static int kind_of(enum snag_code code, int region)
{
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, code, i)); i++)
		if (snag->region == region)
			return snag->kind;
	return -1;
}

static int cut_off(const struct facts *facts)
{
	return !facts->is_reached ? PATH_UNREACHED : facts->leads ? -1 :
		garden.plot.details.around.houses.count > 0 ? PATH_TO_NO_HOUSE : PATH_TO_NOTHING;
}

static void check(const struct looking *l, int seed, int told[3])
{
	for (int i = 0; i < survey()->region_count; i++) {
		enum plot_class class = survey()->regions[i].entry->class;
		const struct facts *facts = &l->facts[i];
		int expected = class == CLASS_PATH && facts->first == i ? cut_off(facts) : -1;
		bool has_none = class == CLASS_FIXTURE && facts->is_open && !facts->is_reached;

		ck_assert_msg(kind_of(SNAG_PATH_CUT_OFF, i) == expected, "seed %d, region %d",
			seed, i);
		ck_assert_msg((kind_of(SNAG_FIXTURE_NO_PATH, i) >= 0) == has_none,
			"seed %d, region %d", seed, i);
		told[0] += expected == PATH_UNREACHED;
		told[1] += expected > PATH_UNREACHED;
		told[2] += has_none;
	}
}

static void garden_at_random(struct random *random)
{
	static const char *const letters[] = { "pS..b", "pqS.l", "pq.....", "p........." };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, random, MOST, letters[random_below(random, 4)]);
	if (random_below(random, 2))
		fences_at_random(&garden.plot, random);
	if (random_below(random, 2)) {
		int left = random_between(random, -3, MOST), top = random_between(random, -3, MOST);

		obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
			(struct rectangle){ left, top, left + random_below(random, 3),
			top + random_below(random, 3) };
	}
	garden_count(&garden);
}

START_TEST(each_path_and_fixture_is_told_by_all_that_it_touches)
{
	int told[3] = { 0, 0, 0 };

	for (int seed = 0; seed < runner_count(1500, 10000); seed++) {
		struct random random = { (uint64_t)seed };
		struct arena arena = ARENA_EMPTY;
		struct looking l;

		garden_at_random(&random);
		l.fences = fence_map_of(&garden.plot, &arena);
		l.houses = house_map_of(&garden.plot, 1, &arena);
		l.way = way_from_outside(survey(), &l.fences);
		look(&l);
		check(&l, seed, told);
		free(l.way);
		arena_clear(&arena);
		teardown();
	}
	for (int i = 0; i < 3; i++)
		ck_assert_int_gt(told[i], 10);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("joined");
	TCase *paths = suite_case(suite, "paths");

	tcase_add_checked_fixture(paths, NULL, teardown);
	tcase_add_test(paths, each_path_and_fixture_is_told_by_all_that_it_touches);
	return suite;
}
