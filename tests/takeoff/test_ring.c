/* Rings of blocks on outlines at random, held against trying every choice of corners. */

#include "takeoff/walls/ring.h"

#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"

enum { SIDES_MOST = 10 };
#define FAULT INT64_C(1000000)

static struct arena arena;
static struct survey survey;
static struct plot plot;

static void teardown(void)
{
	arena_clear(&arena);
}

/* The ring of one region of the plot. */
struct built {
	struct outline outline;
	struct masonry masonry;
	struct ring ring;
};

static void build(struct built *built, int region)
{
	outline_trace(&built->outline, &arena, &plot, &survey, region);
	ck_assert(ring_lay(&built->ring, &(struct ring_plan){ .arena = &arena,
		.book = side_book_new(&arena), .outline = &built->outline, .cell = survey.cell,
		.masonry = built->masonry }));
}

/* Beds at random in cells of so much, every side at least as many cells. */
static void start(struct random *random, nm cell, int least, int most)
{
	beds_at_random(&plot, random, least, most);
	beds_set_cell(&plot, cell);
	survey_plot(&survey, &arena, &plot);
}

static void finish(void)
{
	plot_fini(&plot);
	arena_clear(&arena);
}

static struct masonry masonry_at_random(struct random *random)
{
	struct size block = beds_random_block(random);

	return (struct masonry){ block.along, block.across,
		bond_shortest(block.along, 3 * NM_PER_INCH), random_between(random, 1, 5) };
}

/* Cells that a side needs for one piece beside the corner. */
static int least_side(const struct masonry *masonry, nm cell)
{
	return (int)((masonry->depth + masonry->shortest + cell - 1) / cell);
}

static nm side_length(const struct loop *loop, int side)
{
	return outline_side(loop, side) * survey.cell;
}

/* The cost of one side, from its own two runs. */
static int64_t side_cost(const struct built *built, const struct loop *loop, int at,
	const bool *through)
{
	int next = (at + 1) % loop->count;
	const struct masonry *m = &built->masonry;
	struct side side = { side_length(loop, at), loop->corners[at].reflex,
		loop->corners[next].reflex, through[at], !through[next], false };
	struct bond_run odd = side_run(&side, m->depth, false);
	struct bond_run even = side_run(&side, m->depth, true);
	struct bond_rule rule = { .block = m->length, .shortest = m->shortest,
		.corner = bond_corner(m->length, m->depth),
		.enough = bond_enough(m->length, m->depth), .odd_courses = (m->courses + 1) / 2,
		.even_courses = m->courses / 2 };
	struct bond bond;

	if (!bond_lay(&bond, &arena, &odd, m->courses > 1 ? &even : NULL, &rule))
		return INT64_MAX;
	return rule.odd_courses * bond.odd.cut + rule.even_courses * bond.even.cut +
		(bond.holds ? 0 : 2 * FAULT) + (bond.corners_hold ? 0 : FAULT);
}

static int64_t cheapest(const struct built *built, const struct loop *loop)
{
	int64_t best = INT64_MAX;

	for (int choice = 0; choice < 1 << loop->count; choice++) {
		bool through[SIDES_MOST];
		int64_t cost = 0;

		for (int i = 0; i < loop->count; i++)
			through[i] = choice >> i & 1;
		for (int i = 0; i < loop->count && cost < INT64_MAX; i++) {
			int64_t side = side_cost(built, loop, i, through);

			cost = side == INT64_MAX ? INT64_MAX : cost + side;
		}
		best = cost < best ? cost : best;
	}
	return best;
}

/* Has each bed of plots at random checked, in rings of random masonry. Returns how many beds. */
static int check_at_random(uint64_t seed, int plots, int most, void (*check)(const struct built *))
{
	struct random random = { seed };
	int beds = 0;

	for (int n = 0; n < plots; n++) {
		struct built built = { .masonry = masonry_at_random(&random) };
		nm cell = random_between(&random, 4, 12) * NM_PER_INCH;

		start(&random, cell, least_side(&built.masonry, cell), most);
		for (int i = 0; i < survey.region_count; i++, beds++) {
			build(&built, i);
			check(&built);
		}
		finish();
	}
	return beds;
}

static int faults_of(const struct ring *ring)
{
	int count = 0;

	for (int i = 0; i < ring->fault_count; i++)
		count += 2 * ring->faults[i].is_unbonded + (ring->faults[i].corner > 0);
	return count;
}

static void check_cheapest(const struct built *built)
{
	int64_t odd = (built->masonry.courses + 1) / 2, even = built->masonry.courses / 2;

	if (built->outline.count > 1 || built->outline.loops[0].count > SIDES_MOST)
		return;
	ck_assert_int_eq(odd * built->ring.odd.cut + even * built->ring.even.cut +
		FAULT * faults_of(&built->ring), cheapest(built, &built->outline.loops[0]));
}

START_TEST(no_other_choice_of_corners_makes_a_cheaper_ring)
{
	ck_assert_int_gt(check_at_random(61, 100, 2, check_cheapest), 80);
}
END_TEST

static void check_uncut(const struct ring *ring)
{
	ck_assert_int_eq(ring->odd.cut, 0);
	ck_assert_int_eq(ring->even.cut, 0);
	ck_assert_int_eq(ring->fault_count, 0);
}

START_TEST(no_course_needs_a_cut_where_blocks_are_two_depths_long_and_sides_whole_depths)
{
	struct random random = { 62 };
	int holes = 0, beds = 0;

	for (int n = 0; n < 400; n++) {
		nm depth = random_between(&random, 60, 300) * NM_PER_MM;
		struct built built = { .masonry = { 2 * depth, depth,
			bond_shortest(2 * depth, 3 * NM_PER_INCH),
			random_between(&random, 1, 5) } };

		start(&random, depth, 3, 6);
		for (int i = 0; i < survey.region_count; i++, beds++) {
			build(&built, i);
			check_uncut(&built.ring);
			holes += built.outline.count - 1;
		}
		finish();
	}
	ck_assert_int_gt(beds, 300);
	ck_assert_int_gt(holes, 25);
}
END_TEST

static nm runs_of_loop(const struct wall_course *course, int loop)
{
	nm sum = 0;

	for (int i = 0; i < course->run_count; i++)
		if (course->runs[i].loop == loop)
			sum += course->runs[i].length;
	return sum;
}

static void check_sums(const struct built *built)
{
	for (int l = 0; l < built->outline.count; l++) {
		nm sum = built->outline.loops[l].perimeter * survey.cell +
			(l == 0 ? -4 : 4) * built->masonry.depth;

		ck_assert_int_eq(runs_of_loop(&built->ring.odd, l), sum);
		if (built->masonry.courses > 1)
			ck_assert_int_eq(runs_of_loop(&built->ring.even, l), sum);
	}
}

START_TEST(runs_add_up_to_the_perimeter_less_four_depths_of_a_hole_to_four_more)
{
	ck_assert_int_gt(check_at_random(63, 200, 5, check_sums), 200);
}
END_TEST

static void check_course(const struct wall_course *course, nm block)
{
	int64_t whole = 0, cut = 0;
	nm length = 0;

	for (int i = 0; i < course->run_count; i++) {
		nm sum = 0;

		for (int n = 0; n < course->runs[i].piece_count; n++) {
			sum += course->runs[i].pieces[n];
			whole += course->runs[i].pieces[n] == block;
			cut += course->runs[i].pieces[n] < block;
		}
		ck_assert_int_eq(sum, course->runs[i].length);
		length += sum;
	}
	ck_assert_int_eq(course->whole, whole);
	ck_assert_int_eq(course->cut, cut);
	ck_assert_int_eq(course->length, length);
}

static void check_order(const struct built *built)
{
	const struct wall_run *run = built->ring.odd.runs;
	int sides = 0;

	for (int l = 0; l < built->outline.count; l++) {
		for (int s = 0; s < built->outline.loops[l].count; s++, run++)
			ck_assert(run->loop == l && run->side == s);
		sides += built->outline.loops[l].count;
	}
	ck_assert_int_eq(built->ring.odd.run_count, sides);
	ck_assert_int_eq(built->ring.even.run_count, built->masonry.courses > 1 ? sides : 0);
	check_course(&built->ring.odd, built->masonry.length);
	check_course(&built->ring.even, built->masonry.length);
}

START_TEST(every_side_has_its_run_in_order_and_the_sums_are_right)
{
	ck_assert_int_gt(check_at_random(64, 100, 4, check_order), 100);
}
END_TEST

START_TEST(in_a_tie_side_0_goes_through_at_its_first_corner_in_course_1)
{
	/* A bed of 4 x 8 ft lays as well the other way round. */
	struct built built = { .masonry = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 4 * NM_PER_INCH,
		3 } };

	plot_from_rows(&plot, (const char *const[]){ "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb",
		NULL });
	survey_plot(&survey, &arena, &plot);
	build(&built, 0);
	ck_assert_int_eq(built.ring.odd.runs[0].from, 0);
	ck_assert_int_eq(built.ring.even.runs[0].from, 8 * NM_PER_INCH);
	finish();
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("ring");
	TCase *rings = suite_case(suite, "rings");

	tcase_add_checked_fixture(rings, NULL, teardown);
	tcase_add_test(rings, no_other_choice_of_corners_makes_a_cheaper_ring);
	tcase_add_test(rings,
		no_course_needs_a_cut_where_blocks_are_two_depths_long_and_sides_whole_depths);
	tcase_add_test(rings,
		runs_add_up_to_the_perimeter_less_four_depths_of_a_hole_to_four_more);
	tcase_add_test(rings, every_side_has_its_run_in_order_and_the_sums_are_right);
	tcase_add_test(rings, in_a_tie_side_0_goes_through_at_its_first_corner_in_course_1);
	return suite;
}
