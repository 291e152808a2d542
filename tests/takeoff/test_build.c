/* Walls and caps of whole beds as a builder sees them: corner pieces, caps on the course below,
 * beds that are images of one another or of themselves. On plans at random, by laws that are
 * checked piece by piece on the ground; and on single beds by hand. */

#include "takeoff/walls/build.h"

#include "support/pieces.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>

#define INCH NM_PER_INCH

static struct beds beds;

static void teardown(void)
{
	beds_fini(&beds);
}

/* ---- Plans at random ------------------------------------------------------------------------- */

/* Of some size in use or any; deeper ones than 3/4 of their length now and then. */
static void set_blocks(struct random *random, nm *depth)
{
	struct size block = beds_random_block(random), cap = beds_random_block(random);

	cap.across = cap.across < block.across ? cap.across : block.across;
	if (random_below(random, 3) == 0)
		cap = (struct size){ block.along, block.across, 2 * INCH };
	beds_set_block(&beds.plot, block.along, block.across, block.up);
	beds_set_courses(&beds.plot, random_between(random, 1, 5));
	block_set(&beds.plot.details.legend[0].block, BED_CAP,
		(struct value){ .set = true, .as.size = cap });
	*depth = block.across;
}

/* A formal plan, its cells so large that most walls and caps can be laid. */
static void lay_formal(struct random *random)
{
	nm depth, cells[] = { 6 * INCH, 12 * INCH, 200 * NM_PER_MM, 18 * INCH };

	beds_formal(&beds.plot, random, random_between(random, 2, 5));
	set_blocks(random, &depth);
	beds_set_cell(&beds.plot, cells[random_below(random, 4)]);
	beds_lay(&beds);
}

/* Beds of joined rectangles. */
static void lay_at_random(struct random *random)
{
	nm depth;

	beds_at_random(&beds.plot, random, 3, 4);
	set_blocks(random, &depth);
	beds_set_cell(&beds.plot, random_between(random, 40, 80) * depth / 50 / NM_PER_MM *
		NM_PER_MM);
	beds_lay(&beds);
}

static int lay_any(struct random *random, int n)
{
	if (n % 2)
		lay_formal(random);
	else
		lay_at_random(random);
	return beds.takeoff.walls.count;
}

static bool has_snag(enum snag_code code, unsigned int kind, int region, int loop, int side)
{
	for (size_t i = 0; i < beds.takeoff.snags.count; i++) {
		const struct snag *snag = &beds.takeoff.snags.list[i];

		if (snag->code == code && snag->kind == kind && snag->region == region &&
			snag->loop == loop && snag->side == side)
			return true;
	}
	return false;
}

/* ---- Corner pieces --------------------------------------------------------------------------- */

struct ends {
	bool first, last; /* the run shows its head at a convex corner */
	bool first_through, last_through;
};

/* By where it starts and ends: through a convex corner from 0, through a reflex one from -w. */
static struct ends ends_of(const struct outline *outline, const struct wall_run *run, nm cell)
{
	const struct loop *loop = &outline->loops[run->loop];
	nm end = outline_side(loop, run->side) * cell;
	bool first = loop->corners[run->side].reflex;
	bool last = loop->corners[(run->side + 1) % loop->count].reflex;
	struct ends ends = {
		.first_through = first ? run->from < 0 : run->from == 0,
		.last_through = last ? run->from + run->length > end :
			run->from + run->length == end,
	};

	ends.first = ends.first_through && !first;
	ends.last = ends.last_through && !last;
	return ends;
}

/* max(l/2, w) long or longer; half a block deeper than long counts as the whole block. A piece
 * that shows both ends is whole. Common practice, no published source. */
static bool has_good_heads(const struct wall_run *run, struct ends ends, const struct size *block)
{
	nm least = block->along / 2 > block->across ? block->along / 2 : block->across;
	nm first = ends.first ? run->pieces[0] : block->along;
	nm last = ends.last ? run->pieces[run->piece_count - 1] : block->along;

	least = least < block->along ? least : block->along;
	return first >= least && last >= least &&
		!(run->piece_count == 1 && ends.first && ends.last && first < block->along);
}

static bool are_good_heads(const struct wall *wall, const struct outline *outline, int run)
{
	nm cell = beds.takeoff.survey.cell;
	const struct wall_run *odd = &wall->odd.runs[run];

	return has_good_heads(odd, ends_of(outline, odd, cell), &wall->block) &&
		(wall->courses == 1 || has_good_heads(&wall->even.runs[run],
			ends_of(outline, &wall->even.runs[run], cell), &wall->block));
}

/* Returns how many sides are named. */
static int check_heads(const struct wall *wall)
{
	nm cell = beds.takeoff.survey.cell;
	struct outline outline;
	int named = 0;

	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, wall->region);
	for (int i = 0; i < wall->odd.run_count; i++) {
		const struct wall_run *run = &wall->odd.runs[i];
		bool is_named = has_snag(SNAG_WALL_CORNER, WALL_CORNER_WALL, wall->region,
			run->loop, run->side);

		ck_assert(are_good_heads(wall, &outline, i) != is_named);
		named += is_named;
		if (!wall->has_cap)
			continue;
		run = &wall->cap.runs[i];
		ck_assert(has_good_heads(run, ends_of(&outline, run, cell), &wall->cap_block) !=
			has_snag(SNAG_WALL_CORNER, WALL_CORNER_CAP, wall->region, run->loop,
				run->side));
	}
	return named;
}

START_TEST(corner_pieces_are_long_enough_or_their_side_is_named)
{
	struct random random = { 71 };
	int walls = 0, sides = 0, named = 0;

	for (int n = 0; n < 300; n++) {
		walls += lay_any(&random, n);
		for (int i = 0; i < beds.takeoff.walls.count; i++) {
			const struct wall *wall = &beds.takeoff.walls.list[i];
			int here = check_heads(wall);

			/* Deeper blocks cannot have both bond and corner pieces. */
			if (4 * wall->block.across > 3 * wall->block.along)
				continue;
			named += here;
			sides += wall->odd.run_count;
		}
		beds_fini(&beds);
	}
	ck_assert_int_gt(walls, 800);
	ck_assert_int_lt(100 * named, 2 * sides);
	ck_assert_int_gt(sides, 3000);
}
END_TEST

/* ---- Caps ------------------------------------------------------------------------------------ */

/* Where joints are along the side's outer face; those that are ends last. */
static int joints_of(const struct wall_run *run, struct ends ends, nm *joints, int *ends_from)
{
	int count = 0;
	nm at = run->from;

	for (int i = 0; i + 1 < run->piece_count; i++)
		joints[count++] = at += run->pieces[i];
	*ends_from = count;
	if (!ends.first)
		joints[count++] = run->from;
	if (!ends.last)
		joints[count++] = run->from + run->length;
	return count;
}

enum { JOINTS_MOST = 1000 };

/* No joint of the cap is nearer than that to one below; of two ends none is measured. */
static bool keeps_apart(const struct wall_run *cap, struct ends cap_ends,
	const struct wall_run *below, struct ends below_ends, nm apart)
{
	static nm a[JOINTS_MOST], b[JOINTS_MOST];
	int a_ends, b_ends;
	int a_count = joints_of(cap, cap_ends, a, &a_ends);
	int b_count = joints_of(below, below_ends, b, &b_ends);

	for (int i = 0; i < a_count; i++)
		for (int j = 0; j < b_count; j++)
			if ((i < a_ends || j < b_ends) && 4 * llabs(a[i] - b[j]) < apart)
				return false;
	return true;
}

static bool is_bonded(const struct wall *wall, const struct outline *outline, int run)
{
	const struct wall_course *last = wall->courses % 2 ? &wall->odd : &wall->even;
	const struct wall_run *cap = &wall->cap.runs[run], *below = &last->runs[run];
	nm cell = beds.takeoff.survey.cell, l = wall->block.along, cap_l = wall->cap_block.along;
	struct ends of_cap = ends_of(outline, cap, cell), of_wall = ends_of(outline, below, cell);

	return of_cap.first_through != of_wall.first_through &&
		of_cap.last_through != of_wall.last_through &&
		keeps_apart(cap, of_cap, below, of_wall, l < cap_l ? l : cap_l);
}

/* Returns how many sides are named. */
static int check_cap(const struct wall *wall)
{
	struct outline outline;
	int named = 0;

	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, wall->region);
	for (int i = 0; i < wall->cap.run_count; i++) {
		const struct wall_run *run = &wall->cap.runs[i];
		bool is_named = has_snag(SNAG_CAP_BOND, 0, wall->region, run->loop, run->side);

		for (int j = 0; j < run->piece_count; j++)
			ck_assert_int_ge(run->pieces[j], wall->cap_block.along / 2);
		ck_assert(is_bonded(wall, &outline, i) != is_named);
		named += is_named;
	}
	return named;
}

START_TEST(caps_bond_with_the_course_below_or_their_side_is_named)
{
	struct random random = { 72 };
	int caps = 0, sides = 0, named = 0;

	for (int n = 0; n < 300; n++) {
		lay_any(&random, n);
		for (int i = 0; i < beds.takeoff.walls.count; i++) {
			const struct wall *wall = &beds.takeoff.walls.list[i];
			int here = check_cap(wall);

			caps += wall->has_cap;
			if (wall->has_cap && wall->cap_block.along == wall->block.along &&
				wall->cap_block.across == wall->block.across &&
				4 * wall->block.across <= 3 * wall->block.along) {
				sides += wall->cap.run_count;
				named += here;
			}
		}
		beds_fini(&beds);
	}
	ck_assert_int_gt(caps, 500);
	ck_assert_int_gt(sides, 500);
	ck_assert_int_lt(named, sides / 5);
}
END_TEST

/* A bed of so many cells of a foot. */
static const struct wall *rectangle(int columns, int rows, const char *block, const char *cap,
	int courses)
{
	beds_rectangle(&beds.plot, columns, rows);
	plot_set(&beds.plot, 'b', BED_BLOCK, block);
	if (cap)
		plot_set(&beds.plot, 'b', BED_CAP, cap);
	beds_set_courses(&beds.plot, courses);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	return &beds.takeoff.walls.list[0];
}

START_TEST(a_cap_on_any_number_of_courses_has_no_joint_on_one_below)
{
	/* 10 x 6 ft, 16 x 8 x 6 in block and cap of its size: 22 blocks a course, none cut. Laid
	 * like the course that follows, the cap is whole too. */
	for (int courses = 1; courses <= 6; courses++) {
		const struct wall *wall = rectangle(10, 6, "16 in x 8 in x 6 in",
			"16 in x 8 in x 2 in", courses);
		const struct wall_course *next = courses % 2 || courses == 1 ? &wall->even :
			&wall->odd;

		ck_assert_int_eq(wall->cap.whole, 22);
		ck_assert_int_eq(wall->cap.cut, 0);
		ck_assert_int_eq(check_cap(wall), 0);
		for (int i = 0; i < next->run_count; i++)
			ck_assert_int_eq(wall->cap.runs[i].from, next->runs[i].from);
		beds_fini(&beds);
	}
	beds_rectangle(&beds.plot, 1, 1);
}
END_TEST

START_TEST(where_a_swapped_corner_leaves_no_room_for_half_a_cap_the_side_is_named)
{
	/* 48 x 24 in outside of block 16 x 4 in: course 1 is whole with the long sides through,
	 * 48 in, and 16 in between them; so lies the cap on two courses. Half of one 30 in long
	 * has room in 16 in, half of one 34 in long has not: there corners are not swapped. */
	for (int is_longer = 0; is_longer < 2; is_longer++) {
		const struct wall *wall;

		beds_rectangle(&beds.plot, 2, 1);
		beds_set_cell(&beds.plot, 24 * INCH);
		plot_set(&beds.plot, 'b', BED_BLOCK, "16 in x 4 in x 4 in");
		plot_set(&beds.plot, 'b', BED_CAP, is_longer ? "34 in x 4 in x 2 in" :
			"30 in x 4 in x 2 in");
		beds_set_courses(&beds.plot, 2);
		beds_lay(&beds);
		wall = &beds.takeoff.walls.list[0];
		ck_assert(wall->has_cap);
		ck_assert_int_eq(wall->odd.runs[1].length, 16 * INCH);
		ck_assert((wall->cap.runs[1].length == 16 * INCH) == !is_longer);
		check_cap(wall);
		ck_assert(!is_longer || beds_snags(&beds, SNAG_CAP_BOND) > 0);
		beds_fini(&beds);
	}
	beds_rectangle(&beds.plot, 1, 1);
}
END_TEST

/* ---- Images ---------------------------------------------------------------------------------- */

static void check_image(const struct wall *wall, const struct wall *like,
	const struct wall_course *course, const struct wall_course *other, nm depth)
{
	struct pieces_laid one = pieces_laid(&beds, like->region, other, depth);
	struct pieces_laid two = pieces_laid(&beds, wall->region, course, depth);

	pieces_turn(&one, &beds, like->region, wall->turn);
	ck_assert(pieces_equal(&one, &two));
	pieces_free(&one);
	pieces_free(&two);
}

/* Every loop, side by side, in the bed's own numbering. */
static void check_numbering(const struct wall *wall, const struct wall_course *course)
{
	struct outline outline;
	int run = 0;

	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, wall->region);
	for (int l = 0; l < outline.count; l++)
		for (int s = 0; s < outline.loops[l].count; s++, run++)
			ck_assert(course->runs[run].loop == l && course->runs[run].side == s);
	ck_assert_int_eq(course->run_count, run);
}

START_TEST(images_have_the_pieces_of_the_bed_they_are_like_each_in_its_place)
{
	struct random random = { 73 };
	int turns[TURNS] = { 0 };

	for (int n = 0; n < 200; n++) {
		lay_any(&random, n);
		for (int i = 0; i < beds.takeoff.walls.count; i++) {
			const struct wall *wall = &beds.takeoff.walls.list[i];
			const struct wall *like = walls_find(&beds.takeoff.walls, wall->like);

			turns[wall->turn]++;
			check_numbering(wall, &wall->odd);
			check_image(wall, like, &wall->odd, &like->odd, wall->block.across);
			if (wall->courses > 1)
				check_image(wall, like, &wall->even, &like->even,
					wall->block.across);
			ck_assert(wall->has_cap == like->has_cap);
			if (wall->has_cap)
				check_image(wall, like, &wall->cap, &like->cap,
					wall->cap_block.across);
			ck_assert(wall->cut_pieces == like->cut_pieces &&
				wall->whole_blocks == like->whole_blocks);
		}
		beds_fini(&beds);
	}
	ck_assert_int_gt(turns[TURN_LEFT_RIGHT], 50);
	ck_assert_int_gt(turns[TURN_TOP_BOTTOM], 50);
	ck_assert_int_gt(turns[TURN_HALF], 50);
}
END_TEST

/* A bed without symmetry, 7 x 5 cells, and where its cells go by each turn. */
static bool is_drawn(enum turn turn, int x, int y)
{
	static const char *const rows[] = { "bbbbbbb", "bbbbbbb", "bbbb...", "bbbb...", "bbbb..." };
	int across[] = { x, 6 - x, x, 6 - x, y, 6 - y, y, 6 - y };
	int down[] = { y, y, 4 - y, 4 - y, 4 - x, x, x, 4 - x };

	return across[turn] >= 0 && across[turn] < 7 && down[turn] >= 0 && down[turn] < 5 &&
		rows[down[turn]][across[turn]] == 'b';
}

START_TEST(all_eight_images_are_laid_as_images)
{
	int seen = 0;

	beds_rectangle(&beds.plot, 64, 8);
	for (int i = 0; i < 64 * 8; i++)
		beds.plot.ground.cells[i] = is_drawn((enum turn)(i % 64 / 8), i % 8, i / 64) ?
			'b' : OPEN_GROUND;
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 8);
	for (int i = 0; i < beds.takeoff.walls.count; i++) {
		const struct wall *wall = &beds.takeoff.walls.list[i];
		const struct wall *like = walls_find(&beds.takeoff.walls, wall->like);

		ck_assert_int_eq(wall->like, beds.takeoff.walls.list[0].region);
		seen |= 1 << wall->turn;
		check_image(wall, like, &wall->odd, &like->odd, wall->block.across);
		check_image(wall, like, &wall->even, &like->even, wall->block.across);
	}
	ck_assert_int_eq(seen, 255);
}
END_TEST

/* Flipped, the hole at the right comes first in reading order. */
START_TEST(holes_of_an_image_have_its_own_order)
{
	const struct wall *walls;

	plot_from_rows(&beds.plot, (const char *const[]){
		"bbbbbbbbbbb.bbbbbbbbbbb", "bbbbbbbbbbb.bbbbbbbbbbb", "bb..bb...bb.bb...bb..bb",
		"bb..bb...bb.bb...bb..bb", "bbbbbbbbbbb.bbbbbbbbbbb", "bbbbbbbbbbb.bbbbbbbbbbb",
		NULL });
	plot_set(&beds.plot, 0, HEAD_MIRROR, "left-right");
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 6 * INCH);
	beds_set_courses(&beds.plot, 2);
	plot_set(&beds.plot, 0, ALLOW_INSIDE, "1 in");
	beds_lay(&beds);
	walls = beds.takeoff.walls.list;
	ck_assert_int_eq(beds.takeoff.walls.count, 2);
	ck_assert_int_eq(walls[1].like, walls[0].region);
	check_numbering(&walls[1], &walls[1].odd);
	check_numbering(&walls[1], &walls[1].even);
	check_image(&walls[1], &walls[0], &walls[1].odd, &walls[0].odd, 8 * INCH);
	check_image(&walls[1], &walls[0], &walls[1].even, &walls[0].even, 8 * INCH);
}
END_TEST

/* ---- Own images ------------------------------------------------------------------------------ */

static bool is_own(const struct wall *wall, enum turn turn)
{
	return pieces_are_own_image(&beds, wall->region, &wall->odd, wall->block.across, turn) &&
		(wall->courses == 1 || pieces_are_own_image(&beds, wall->region, &wall->even,
			wall->block.across, turn)) &&
		(!wall->has_cap || pieces_are_own_image(&beds, wall->region, &wall->cap,
			wall->cap_block.across, turn));
}

/* Two rectangles, the second as many of their own widths and heights, and a cell, away. */
static void lay_pair(const char *mirror, int columns, int rows, struct place away)
{
	int wide = columns + away.x * (columns + 1), high = rows + away.y * (rows + 1);

	beds_rectangle(&beds.plot, wide, high);
	plot_set(&beds.plot, 0, HEAD_MIRROR, mirror);
	for (int y = 0; y < high; y++)
		for (int x = 0; x < wide; x++)
			if ((x >= columns || y >= rows) && (x < wide - columns || y < high - rows))
				beds.plot.ground.cells[y * wide + x] = OPEN_GROUND;
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 6 * INCH);
	beds_set_courses(&beds.plot, 2);
	beds_lay(&beds);
}

static const struct {
	const char *mirror;
	struct place away;
	enum turn turn;
} mirrored[] = {
	{ "left-right", { 1, 0 }, TURN_LEFT_RIGHT }, { "top-bottom", { 0, 1 }, TURN_TOP_BOTTOM },
	{ "half-turn", { 1, 1 }, TURN_HALF }, { "half-turn", { 1, 0 }, TURN_HALF },
	{ "half-turn", { 0, 1 }, TURN_HALF }, { "four-way", { 1, 1 }, TURN_HALF },
	{ "four-way", { 1, 0 }, TURN_LEFT_RIGHT }, { "four-way", { 0, 1 }, TURN_TOP_BOTTOM },
};

/* Rectangles are images in several ways: their walls are by the plan's mirror. */
START_TEST(walls_of_images_are_those_that_the_mirror_shows)
{
	int told = 0;

	for (int n = 0; n < 36; n++) {
		lay_pair(mirrored[_i].mirror, 4 + n % 6, 3 + n / 6, mirrored[_i].away);
		ck_assert_int_eq(beds.takeoff.walls.count, 2);
		const struct wall *first = beds.takeoff.walls.list;
		struct wall second = first[1];

		told += !is_own(first, mirrored[_i].turn);
		second.turn = mirrored[_i].turn;
		check_image(&second, first, &second.odd, &first->odd, 8 * INCH);
		check_image(&second, first, &second.even, &first->even, 8 * INCH);
		beds_fini(&beds);
	}
	ck_assert_int_gt(told, 5);
	beds_rectangle(&beds.plot, 1, 1);
}
END_TEST

START_TEST(a_bed_that_can_be_laid_as_its_own_image_without_more_cuts_is)
{
	/* 8 x 4 ft lays whole as well with both long sides through. */
	const struct wall *wall = rectangle(8, 4, "16 in x 8 in x 6 in", NULL, 3);

	ck_assert_int_eq(wall->cut_pieces, 0);
	ck_assert(is_own(wall, TURN_LEFT_RIGHT) && is_own(wall, TURN_TOP_BOTTOM));
	ck_assert_int_eq(wall->odd.runs[0].length, 96 * INCH);
	ck_assert_int_eq(wall->odd.runs[1].length, 32 * INCH);
}
END_TEST

START_TEST(where_its_own_image_would_cost_a_cut_more_it_is_not_laid_so)
{
	/* One course of 5 x 5 ft of 16 x 8 in block: 52 in a side are three blocks and a piece of
	 * 4 in, whoever turns; through at both ends 60 in are three and 12 in, between them 44 in
	 * two and 12 in: a cut a side as well. But three blocks and 12 in are their own image with
	 * two cuts only, so the quarter turns are taken. */
	const struct wall *wall = rectangle(5, 5, "16 in x 8 in x 6 in", NULL, 1);

	ck_assert_int_eq(wall->cut_pieces, 4);
	ck_assert(!is_own(wall, TURN_LEFT_RIGHT) && !is_own(wall, TURN_TOP_BOTTOM));
	ck_assert(is_own(wall, TURN_QUARTER) && is_own(wall, TURN_HALF));
}
END_TEST

START_TEST(a_mirrored_bed_with_a_hole_and_jogs_is_its_own_image_where_blocks_are_whole)
{
	/* Block two depths long and sides of whole depths: nothing is cut, mirrored or not. */
	plot_from_rows(&beds.plot, (const char *const[]){
		"...bbbbbbbb...", "...bbbbbbbb...", "...bbbbbbbb...", "bbbbbbbbbbbbbb",
		"bbbbb....bbbbb", "bbbbb....bbbbb", "bbbbb....bbbbb", "bbbbbbbbbbbbbb",
		"bbbbbbbbbbbbbb", "bbbbbbbbbbbbbb", NULL });
	beds_set_block(&beds.plot, 24 * INCH, 12 * INCH, 6 * INCH);
	plot_set(&beds.plot, 0, ALLOW_INSIDE, "1 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	ck_assert_int_eq(beds.takeoff.walls.list[0].cut_pieces, 0);
	ck_assert(is_own(&beds.takeoff.walls.list[0], TURN_LEFT_RIGHT));
}
END_TEST

/* ---- Mirrored plans -------------------------------------------------------------------------- */

/* A half at random and its image, with a middle column or without. */
static void mirrored_plan(struct random *random, bool is_odd)
{
	const struct ground *half = &beds.plot.ground;
	struct ground whole;
	nm depth;

	beds_at_random(&beds.plot, random, 3, 3);
	ground_init(&whole, 2 * half->columns + is_odd, half->rows);
	for (int y = 0; y < half->rows; y++) {
		for (int x = 0; x < whole.columns; x++) {
			int from = x < half->columns ? x : whole.columns - 1 - x;

			whole.cells[y * whole.columns + x] = from < half->columns ?
				ground_cell(half, from, y) : OPEN_GROUND;
		}
	}
	ground_fini(&beds.plot.ground);
	beds.plot.ground = whole;
	set_blocks(random, &depth);
	beds_set_cell(&beds.plot, random_between(random, 40, 60) * depth / 40);
	beds_lay(&beds);
}

static int image_of(int region)
{
	const struct survey *survey = &beds.takeoff.survey;
	struct place first = survey->regions[region].first_cell;

	return survey_region_at(survey, survey->columns - 1 - first.x, first.y);
}

/* Returns true where the bed has its image beside it, checked piece by piece. */
static bool check_mirrored(const struct wall *wall)
{
	int other = image_of(wall->region);
	const struct wall *image = walls_find(&beds.takeoff.walls, other);
	struct pieces_laid one, two;

	ck_assert_ptr_nonnull(image);
	ck_assert(wall->whole_blocks == image->whole_blocks &&
		wall->cut_pieces == image->cut_pieces && wall->has_cap == image->has_cap &&
		wall->cap.whole == image->cap.whole && wall->cap.cut == image->cap.cut);
	ck_assert_double_eq(wall->bead, image->bead);
	if (other == wall->region)
		return false;
	one = pieces_laid(&beds, wall->region, &wall->odd, wall->block.across);
	two = pieces_laid(&beds, other, &image->odd, wall->block.across);
	pieces_turn(&one, &beds, wall->region, TURN_LEFT_RIGHT);
	ck_assert(pieces_equal(&one, &two));
	pieces_free(&one);
	pieces_free(&two);
	one = pieces_laid(&beds, wall->region, &wall->cap, wall->cap_block.across);
	two = pieces_laid(&beds, other, &image->cap, wall->cap_block.across);
	pieces_turn(&one, &beds, wall->region, TURN_LEFT_RIGHT);
	ck_assert(pieces_equal(&one, &two));
	pieces_free(&one);
	pieces_free(&two);
	return true;
}

START_TEST(walls_of_a_mirrored_plan_are_mirrored_with_an_even_and_an_odd_number_of_cells)
{
	struct random random = { 74 };
	int checked = 0;

	for (int n = 0; n < 200; n++) {
		mirrored_plan(&random, n % 2);
		for (int i = 0; i < beds.takeoff.walls.count; i++)
			checked += check_mirrored(&beds.takeoff.walls.list[i]);
		beds_fini(&beds);
	}
	ck_assert_int_gt(checked, 200);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("build");
	TCase *single = suite_case(suite, "single beds");
	TCase *random = suite_case(suite, "plans at random");

	tcase_add_checked_fixture(single, NULL, teardown);
	tcase_add_test(single, a_cap_on_any_number_of_courses_has_no_joint_on_one_below);
	tcase_add_test(single,
		where_a_swapped_corner_leaves_no_room_for_half_a_cap_the_side_is_named);
	tcase_add_test(single, all_eight_images_are_laid_as_images);
	tcase_add_test(single, holes_of_an_image_have_its_own_order);
	tcase_add_loop_test(single, walls_of_images_are_those_that_the_mirror_shows, 0,
		sizeof mirrored / sizeof *mirrored);
	tcase_add_test(single, a_bed_that_can_be_laid_as_its_own_image_without_more_cuts_is);
	tcase_add_test(single, where_its_own_image_would_cost_a_cut_more_it_is_not_laid_so);
	tcase_add_test(single,
		a_mirrored_bed_with_a_hole_and_jogs_is_its_own_image_where_blocks_are_whole);

	tcase_add_test(random, corner_pieces_are_long_enough_or_their_side_is_named);
	tcase_add_test(random, caps_bond_with_the_course_below_or_their_side_is_named);
	tcase_add_test(random,
		images_have_the_pieces_of_the_bed_they_are_like_each_in_its_place);
	tcase_add_test(random,
		walls_of_a_mirrored_plan_are_mirrored_with_an_even_and_an_odd_number_of_cells);
	return suite;
}
