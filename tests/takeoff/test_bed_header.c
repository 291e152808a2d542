/* The header within a bed: by hand, and by law on random beds, whose inner areas GEOS finds: all of
 * it lies in them, it meets every line. Common practice, no published source. */
#include "takeoff/watering/bed_header.h"
#include "base/measure.h"
#include "support/around.h"
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"

enum { RANDOM_BEDS = 200 };

static const nm FOOT = NM_PER_FOOT, INCH = NM_PER_INCH;

static struct arena arena;
static struct garden garden;
static struct bed_header header;

static void teardown(void)
{
	arena_clear(&arena);
	garden_fini(&garden);
}

/* Lines 6 in from the edges of ground of 6 x 2 ft, 12 in apart; the second ends at `to`. */
static struct chord chords[2];
static struct slab slabs[2];
static struct drip_line lines[2];
static struct drip drip;

static void lay(bool is_upright, nm to)
{
	chords[0] = (struct chord){ 0, 6 * FOOT };
	chords[1] = (struct chord){ 0, to };
	for (int i = 0; i < 2; i++) {
		slabs[i] = (struct slab){ i * FOOT, (i + 1) * FOOT, &chords[i], 1 };
		lines[i] = (struct drip_line){ .across = (6 + 12 * i) * INCH, .chord = chords[i],
			.emitters = 1 };
	}
	drip = (struct drip){ .ground = { is_upright, chords[0], 0, 2 * FOOT, slabs, 2 },
		.lines = lines, .count = 2 };
}

static void come_in(nm along, nm across)
{
	bed_header_find(&header, &arena, &drip, drip.ground.is_upright ?
		&(struct spot){ across, along } : &(struct spot){ along, across });
}

static const struct { int along, across, at, inches; } rectangle[] = {
	/* in inches: at a corner, 6 in to the nearer line and 12 in to the other */
	{ 72, 24, 72, 18 }, { 0, 0, 0, 18 },
	/* at an end, between the lines and on one of them */
	{ 0, 12, 0, 12 }, { 72, 6, 72, 12 },
	/* from below, 24 in along to the nearer end; from the middle to where lines begin */
	{ 24, 24, 0, 42 }, { 48, 24, 72, 42 },
	{ 36, 0, 0, 54 },
	/* from outside the wall's inner face nothing is along */
	{ -8, 12, 0, 12 }, { 80, 32, 72, 18 },
};

START_TEST(it_goes_along_the_side_to_the_nearer_end_and_across_all_lines)
{
	for (int upright = 0; upright < 2; upright++) {
		lay(upright, 6 * FOOT);
		come_in(rectangle[_i].along * INCH, rectangle[_i].across * INCH);
		ck_assert_int_eq(header.count, 1);
		ck_assert_int_eq(header.comes_in.along, rectangle[_i].along * INCH);
		ck_assert_int_eq(header.comes_in.across, rectangle[_i].across * INCH);
		ck_assert_int_eq(header.branches[0].at, rectangle[_i].at * INCH);
		ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2).length,
			rectangle[_i].inches * INCH);
	}
}
END_TEST

/* An L: the line that goes on is met where the other ends, 3 ft in. */
START_TEST(in_an_l_it_goes_across_where_both_lines_are)
{
	lay(false, 3 * FOOT);
	come_in(6 * FOOT, FOOT);
	ck_assert_int_eq(header.count, 1);
	ck_assert_int_eq(header.branches[0].at, 3 * FOOT);
	ck_assert_int_eq(header.branches[0].across.from, 6 * INCH);
	ck_assert_int_eq(header.branches[0].across.to, 18 * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2).length, (3 + 1) * FOOT);
}
END_TEST

/* By zones of one line each: 24 in along, then 6 in to the nearer line, or 18 in to the other. No
 * tube lies between the two lines. */
START_TEST(each_zone_has_a_tube_to_its_own_lines)
{
	lay(false, 6 * FOOT);
	come_in(2 * FOOT, 2 * FOOT);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 1, 1).length, (24 + 6) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 1).length, (24 + 18) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2).length, (24 + 18) * INCH);
}
END_TEST

START_TEST(untold_it_begins_with_the_first_line)
{
	lay(false, 6 * FOOT);
	bed_header_find(&header, &arena, &drip, NULL);
	ck_assert_int_eq(header.comes_in.along, 0);
	ck_assert_int_eq(header.comes_in.across, 6 * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2).length, FOOT);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 1, 1).length, FOOT);
}
END_TEST

START_TEST(without_lines_there_is_none)
{
	drip = (struct drip){ .count = 0 };
	bed_header_find(&header, &arena, &drip, &(struct spot){ 0, 0 });
	ck_assert_int_eq(header.count, 0);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 0).length, 0);
}
END_TEST

/* ---- Holes and notches ----------------------------------------------------------------------- */

/* A bed at ground level of cells of 1 ft with a line in each row of cells. */
static void draw(const char *const *rows)
{
	garden_rows(&garden, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "12 in");
	garden_count(&garden);
	drip = garden.takeoff.watering.list[0].drip;
}

/* In inches. */
static void branch_is(int index, int from, int leaves_along, int leaves_across, int at)
{
	const struct header_branch *branch = &header.branches[index];

	ck_assert_int_eq(branch->from, from);
	ck_assert_int_eq(branch->leaves.along, leaves_along * INCH);
	ck_assert_int_eq(branch->leaves.across, leaves_across * INCH);
	ck_assert_int_eq(branch->at, at * INCH);
}

/* A frame: down the left side, 7 lines from 6 in to 6 ft 6 in; by the bottom, 6 ft along the hole's
 * edge and up its right side, from 6 ft to the first of its lines at 1 ft 6 in. */
START_TEST(round_a_hole_it_has_a_branch)
{
	draw((const char *const[]){ "bbbbbbb", "b.....b", "b.....b", "b.....b", "b.....b",
		"b.....b", "bbbbbbb", NULL });
	ck_assert_int_eq(drip.count, 12);
	come_in(0, 3 * FOOT);
	ck_assert_int_eq(header.count, 2);
	branch_is(0, -1, 0, 36, 0);
	branch_is(1, 0, 0, 72, 72);
	ck_assert_int_eq(header.branches[1].across.from, FOOT + 6 * INCH);
	ck_assert_int_eq(header.branches[1].across.to, 6 * FOOT);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 12).length, (6 + 6) * FOOT + 54 * INCH);
	/* the piece of the second row right of the hole, then that left of it alone */
	ck_assert_int_eq(bed_header_tube(&header, &drip, 2, 1).length, (3 + 6) * FOOT + 54 * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 1, 1).length, FOOT + 6 * INCH);
}
END_TEST

/* Three arms: the branch to the third goes on from that to the second. Both go over the rungs. */
START_TEST(branches_along_one_edge_are_one_tube)
{
	draw((const char *const[]){ "bbbbbbb", "b..b..b", "bbbbbbb", "b..b..b", "bbbbbbb",
		"b..b..b", NULL });
	come_in(0, 0);
	ck_assert_int_eq(header.count, 3);
	branch_is(1, 0, 0, 12, 36);
	branch_is(2, 1, 36, 12, 72);
	ck_assert_int_eq(header.branches[2].across.to, 5 * FOOT + 6 * INCH);
	/* 5 ft 6 in down the first, 6 ft along, twice from 1 ft to 5 ft 6 in */
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, drip.count).length,
		(66 + 72 + 2 * 54) * INCH);
}
END_TEST

/* A Z: from the middle it goes up at the left, where that ends, and has a branch to what lies below
 * at the right. */
START_TEST(to_both_sides_of_a_z_it_has_a_branch)
{
	draw((const char *const[]){ "bbb....", "bbb....", "bbbbbbb", "....bbb", "....bbb", NULL });
	come_in(0, 2 * FOOT + 6 * INCH);
	ck_assert_int_eq(header.count, 2);
	branch_is(0, -1, 0, 30, 0);
	branch_is(1, 0, 0, 36, 48);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 5).length, (30 + 48 + 18) * INCH);
}
END_TEST

/* Over a rung that widens on its way no branch goes. */
START_TEST(a_branch_goes_over_one_stretch_that_is_met)
{
	draw((const char *const[]){ "bbbbbbb.", "b.....b.", "bbbbbbb.", "bbbbbbbb", "b.....b.",
		NULL });
	come_in(0, 0);
	ck_assert_int_eq(header.count, 3);
	branch_is(1, 0, 0, 12, 72);
	branch_is(2, 0, 0, 48, 72);
}
END_TEST

/* At the right 6 ft along, then 1 ft farther below, where other ground ends before it or, in the
 * mirror, begins where it ends. */
START_TEST(a_branch_goes_on_in_the_ground_beside_other_ground)
{
	draw((const char *const[]){ "bbbbbbbbb", "b.....bbb", "bbbbb..bb", NULL });
	come_in(0, 0);
	ck_assert_int_eq(header.count, 2);
	branch_is(1, 0, 0, 12, 84);
	garden_fini(&garden);
	draw((const char *const[]){ "bbbbbbbbb", "bbb.....b", "bb.bbbbbb", NULL });
	come_in(9 * FOOT, 0);
	ck_assert_int_eq(header.count, 2);
	branch_is(1, 0, 9 * 12, 12, 24);
}
END_TEST

/* To what lies left below there is no way from the second row; it is reached from the last. */
START_TEST(ground_that_is_not_below_has_no_branch_from_above)
{
	draw((const char *const[]){ "....b....", "....bbbbb", "bbb.....b", "bbbbbbbbb", NULL });
	come_in(4 * FOOT, 0);
	ck_assert_int_eq(header.count, 3);
	branch_is(0, -1, 48, 0, 48);
	branch_is(1, 0, 48, 24, 96);
	branch_is(2, 1, 96, 36, 36);
}
END_TEST

/* Two lines, 1 ft and 3 ft across: one on the border where the right arm begins or ends. */
START_TEST(lines_on_a_border_are_met_where_their_ground_is)
{
	static const char *const rows[][5] = {
		{ "b.....", "b....b", "bbbbbb", "bbbbbb", NULL },
		{ "bbbbbb", "bbbbbb", "b....b", "b.....", NULL },
	};
	int arm = _i == 0 ? 1 : 2;

	draw(rows[_i]);
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "24 in");
	garden_count(&garden);
	drip = garden.takeoff.watering.list[0].drip;
	ck_assert_int_eq(drip.count, 3);
	come_in(0, _i == 0 ? 4 * FOOT : 0);
	ck_assert_int_eq(header.count, 2);
	for (int i = 0; i < drip.count; i++)
		ck_assert_int_eq(header.of_lines[i], i == arm ? 1 : 0);
	ck_assert_int_eq(header.branches[1].at, 5 * FOOT);
}
END_TEST

/* On the border of two slabs the upper one says which end is nearer. */
START_TEST(between_two_slabs_it_comes_in_at_the_first)
{
	lay(false, 3 * FOOT);
	come_in(2 * FOOT, FOOT);
	ck_assert_int_eq(header.branches[0].at, 0);
}
END_TEST

/* From the notch of a U it goes left along its bottom's edge; the branch to the right arm leaves
 * where it comes in. For that arm alone nothing goes left. */
START_TEST(a_branch_leaves_what_lies_along_its_line_where_it_is_nearest)
{
	draw((const char *const[]){ "b.......b", "b.......b", "bbbbbbbbb", NULL });
	come_in(4 * FOOT, 2 * FOOT);
	ck_assert_int_eq(header.count, 2);
	branch_is(0, -1, 48, 24, 0);
	branch_is(1, 0, 48, 24, 96);
	/* 4 ft to either side; 6 in down and 18 in up, 18 in up */
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, drip.count).length,
		(96 + 24 + 18) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 1, 1).length, (48 + 18) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 1).length, (48 + 18) * INCH);
}
END_TEST

/* From within the hole it comes onto the side beside it. */
START_TEST(it_comes_in_at_the_nearest_ground)
{
	draw((const char *const[]){ "bbbbbbb", "b.....b", "b.....b", "bbbbbbb", NULL });
	come_in(6 * FOOT, 2 * FOOT);
	branch_is(0, -1, 72, 24, 72);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static GEOSGeometry *stretch(GEOSContextHandle_t geos, const struct watered *bed,
	struct bed_point from, struct bed_point to)
{
	const struct survey *survey = &garden.takeoff.survey;
	const struct region *region = &survey->regions[bed->region];
	const struct bed_point ends[] = { from, to };
	GEOSCoordSequence *points = GEOSCoordSeq_create_r(geos, 2, 2);

	for (unsigned int i = 0; i < 2; i++) {
		bool is_upright = bed->drip.ground.is_upright;
		nm x = is_upright ? ends[i].across : ends[i].along;
		nm y = is_upright ? ends[i].along : ends[i].across;

		GEOSCoordSeq_setXY_r(geos, points, i, metres(region->left * survey->cell + x),
			metres(region->first_cell.y * survey->cell + y));
	}
	return GEOSGeom_createLineString_r(geos, points);
}

static GEOSGeometry *inner_of(GEOSContextHandle_t geos, const struct watered *bed)
{
	const struct wall *wall = walls_find(&garden.takeoff.walls, bed->region);
	GEOSGeometry *shape = beds_shape(geos, &garden.takeoff.survey, bed->region);
	/* a hair to all sides for what metres round */
	GEOSGeometry *inner = geos_offset(geos, shape,
		(wall ? -metres(wall->block.across) : 0) + 1e-7);

	geos_free(geos, shape);
	return inner;
}

/* The stretches of a header while they are looked at. */
struct stretches {
	GEOSGeometry *list[200];
	unsigned int count;
};

static void lies_within(GEOSContextHandle_t geos, const struct watered *bed,
	const GEOSGeometry *inner, const struct bed_point ends[2], struct stretches *stretches)
{
	GEOSGeometry *line;

	if (ends[0].along == ends[1].along && ends[0].across == ends[1].across)
		return; /* a line of no length is none to GEOS */
	line = stretch(geos, bed, ends[0], ends[1]);
	ck_assert_int_eq(GEOSCovers_r(geos, inner, line), 1);
	ck_assert_uint_lt(stretches->count, 200);
	stretches->list[stretches->count++] = line;
}

/* Of all of them, what lies on another counted once; in metres. */
static double laid(GEOSContextHandle_t geos, struct stretches *stretches)
{
	GEOSGeometry *all = GEOSGeom_createCollection_r(geos, GEOS_MULTILINESTRING, stretches->list,
		stretches->count);
	GEOSGeometry *once = GEOSUnaryUnion_r(geos, all);
	double length = 0;

	ck_assert_int_eq(GEOSLength_r(geos, once, &length), 1);
	geos_free(geos, all);
	geos_free(geos, once);
	return length;
}

static nm length_of(const struct chord *chord)
{
	return chord->to - chord->from;
}

static void leaves_one_before(int index)
{
	const struct header_branch *branch = &header.branches[index];
	const struct header_branch *from = &header.branches[branch->from];
	struct chord run = { from->leaves.along < from->at ? from->leaves.along : from->at,
		from->leaves.along < from->at ? from->at : from->leaves.along };

	ck_assert_int_lt(branch->from, index);
	if (branch->leaves.across != from->leaves.across)
		run = (struct chord){ from->at, from->at };
	ck_assert_int_eq(chord_nearest(&run, branch->leaves.along), branch->leaves.along);
	ck_assert_int_eq(chord_nearest(&from->across, branch->leaves.across),
		branch->leaves.across);
}

/* Every stretch lies in the ground and none on another, each branch leaves one before it where that
 * one is. Returns the length of them all. */
static nm branches_hold(GEOSContextHandle_t geos, const struct watered *bed)
{
	GEOSGeometry *inner = inner_of(geos, bed);
	struct stretches stretches = { .count = 0 };
	nm length = 0;

	for (int i = 0; i < header.count; i++) {
		const struct header_branch *branch = &header.branches[i];
		const struct bed_point turn = { branch->at, branch->leaves.across };

		lies_within(geos, bed, inner, (struct bed_point[2]){ branch->leaves, turn },
			&stretches);
		lies_within(geos, bed, inner, (struct bed_point[2]){
			{ branch->at, branch->across.from }, { branch->at, branch->across.to } },
			&stretches);
		ck_assert_int_le(branch->across.from, branch->leaves.across);
		ck_assert_int_ge(branch->across.to, branch->leaves.across);
		if (i > 0)
			leaves_one_before(i);
		length += length_of(&branch->across) + (branch->at > branch->leaves.along ?
			branch->at - branch->leaves.along : branch->leaves.along - branch->at);
	}
	ck_assert_double_eq_tol(laid(geos, &stretches), metres(length), 1e-6);
	geos_free(geos, inner);
	return length;
}

static void lines_are_met(void)
{
	for (int i = 0; i < drip.count; i++) {
		const struct drip_line *line = &drip.lines[i];
		const struct header_branch *branch = &header.branches[header.of_lines[i]];

		ck_assert_int_eq(chord_nearest(&line->chord, branch->at), branch->at);
		ck_assert_int_eq(chord_nearest(&branch->across, line->across), line->across);
	}
}

/* No branch is there for nothing: without its lines and branches each would be shorter. */
static void all_serve(void)
{
	nm all = bed_header_tube(&header, &drip, 0, drip.count).length, most_of_one = 0;

	for (int i = 0; i < drip.count; i++) {
		nm one = bed_header_tube(&header, &drip, i, 1).length;

		ck_assert_int_le(one, all);
		most_of_one = one > most_of_one ? one : most_of_one;
	}
	ck_assert_int_le(all, drip.count * most_of_one);
}

START_TEST(on_random_beds_it_lies_in_their_ground_and_meets_all_lines)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();

	beds_at_random(&garden.plot, &random, 3, 4);
	beds_set_block(&garden.plot, 12 * INCH, 4 * INCH, 4 * INCH);
	if (random_below(&random, 2))
		plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.watering.count; i++) {
		const struct watered *bed = &garden.takeoff.watering.list[i];
		const struct chord *box = &bed->drip.ground.box;

		drip = bed->drip;
		come_in(box->from + random_between(&random, 0, 100) * length_of(box) / 100,
			random_between(&random, 0, 100) * drip.ground.far / 100);
		lines_are_met();
		all_serve();
		ck_assert_int_eq(branches_hold(geos, bed),
			bed_header_tube(&header, &drip, 0, drip.count).length);
	}
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bed_header");
	TCase *hand = suite_case(suite, "by hand"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_loop_test(hand, it_goes_along_the_side_to_the_nearer_end_and_across_all_lines, 0,
		sizeof rectangle / sizeof *rectangle);
	tcase_add_test(hand, in_an_l_it_goes_across_where_both_lines_are);
	tcase_add_test(hand, each_zone_has_a_tube_to_its_own_lines);
	tcase_add_test(hand, untold_it_begins_with_the_first_line);
	tcase_add_test(hand, without_lines_there_is_none);
	tcase_add_test(hand, round_a_hole_it_has_a_branch);
	tcase_add_test(hand, branches_along_one_edge_are_one_tube);
	tcase_add_test(hand, to_both_sides_of_a_z_it_has_a_branch);
	tcase_add_test(hand, a_branch_goes_over_one_stretch_that_is_met);
	tcase_add_test(hand, a_branch_goes_on_in_the_ground_beside_other_ground);
	tcase_add_test(hand, ground_that_is_not_below_has_no_branch_from_above);
	tcase_add_loop_test(hand, lines_on_a_border_are_met_where_their_ground_is, 0, 2);
	tcase_add_test(hand, between_two_slabs_it_comes_in_at_the_first);
	tcase_add_test(hand, a_branch_leaves_what_lies_along_its_line_where_it_is_nearest);
	tcase_add_test(hand, it_comes_in_at_the_nearest_ground);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, on_random_beds_it_lies_in_their_ground_and_meets_all_lines, 0,
		runner_count(RANDOM_BEDS / 4, RANDOM_BEDS));
	return suite;
}
