/* Walls of whole beds: published counts, and laws held by GEOS on beds at random. */

#include "takeoff/walls/wall.h"

#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"
#include "takeoff/walls/bond.h"

#include <math.h>
#include <string.h>

#define INCH NM_PER_INCH

static struct beds beds;

static void teardown(void)
{
	beds_fini(&beds);
}

/* A bed of so many cells. */
static void rectangle(int columns, int rows)
{
	char row[64] = "";
	const char *all[64] = { NULL };

	memset(row, 'b', (size_t)columns);
	for (int y = 0; y < rows; y++)
		all[y] = row;
	plot_from_rows(&beds.plot, all);
}

static const struct wall *only_wall(void)
{
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	return &beds.takeoff.walls.list[0];
}

static double metres(nm length)
{
	return (double)length / (double)NM_PER_M;
}

/* ---- Published and reckoned by hand ---------------------------------------------------------- */

START_TEST(a_house_of_20_by_16_ft_takes_52_blocks_a_course_and_624_in_all)
{
	/* By arithmetic: 8 x 8 x 16 in block, (72 ft - 32 in) / 16 in = 52 a course, 12 courses. */
	rectangle(20, 16);
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 8 * INCH);
	beds_set_courses(&beds.plot, 12);
	beds_lay(&beds);
	ck_assert_int_eq(only_wall()->odd.whole, 52);
	ck_assert_int_eq(only_wall()->even.whole, 52);
	ck_assert_int_eq(only_wall()->whole_blocks, 624);
	ck_assert_int_eq(only_wall()->cut_pieces, 0);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].bought, 624);
}
END_TEST

START_TEST(a_building_of_20_by_8_ft_takes_480_where_the_outside_perimeter_says_504)
{
	/* US Navy, Naval Education and Training, NAVEDTRA 14045, table 4-3 (its title and year not
	 * noted), reckons 42 a course by the outside perimeter, 504 in 12 courses, which counts
	 * each corner twice: with them a course as it is laid measures as much. The exact ring
	 * (P - 4w) / l is 40 a course, 480. */
	const nm corners = 4 * 8 * INCH;

	rectangle(20, 8);
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 8 * INCH);
	beds_set_courses(&beds.plot, 12);
	beds_lay(&beds);
	ck_assert_int_eq(only_wall()->whole_blocks, 480);
	ck_assert_int_eq(only_wall()->cut_pieces, 0);
	ck_assert_int_eq(only_wall()->odd.length + corners, 42 * 16 * INCH);
	ck_assert_int_eq(only_wall()->even.length + corners, 42 * 16 * INCH);
}
END_TEST

START_TEST(a_face_of_100_by_10_ft_takes_75_a_course_and_1125_in_15)
{
	/* US Navy, Naval Education and Training, NAVEDTRA 14045 (its title and year not noted): a
	 * wall 100 ft long and 10 ft high of 8 x 8 x 16 in block takes 75 x 15 = 1,125. A side of
	 * 100 ft that goes through at both ends is such a face. */
	const struct wall_run *side;

	beds_rectangle(&beds.plot, 100, 4);
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 8 * INCH);
	beds_set_courses(&beds.plot, 15);
	beds_lay(&beds);
	side = &only_wall()->odd.runs[0];
	ck_assert_int_eq(side->length, 1200 * INCH);
	ck_assert_int_eq(side->piece_count, 75);
	ck_assert_int_eq(side->piece_count * only_wall()->courses, 1125);
	ck_assert_int_eq(only_wall()->cut_pieces, 0);
}
END_TEST

START_TEST(a_hundred_square_feet_of_face_take_112_and_a_half_8_by_16_in_blocks)
{
	/* By arithmetic 112.5 units of 8 x 16 in face, mortar joints included, are 100 sq ft.
	 * Faces are the runs as laid, so no corner is counted twice. */
	double face;

	rectangle(20, 16);
	beds_set_block(&beds.plot, 16 * INCH, 8 * INCH, 8 * INCH);
	beds_set_courses(&beds.plot, 12);
	beds_lay(&beds);
	face = metres(12 * only_wall()->odd.length) * metres(8 * INCH) / 0.09290304;
	ck_assert_double_eq_tol((double)beds.takeoff.cuttings.list[0].bought / face * 100, 112.5,
		1e-6);
}
END_TEST

START_TEST(a_bed_of_4_by_8_ft_takes_16_a_course_and_48_in_all)
{
	/* By arithmetic: (24 ft - 32 in) / 16 in = 16. */
	rectangle(8, 4);
	beds_lay(&beds);
	ck_assert_int_eq(only_wall()->odd.whole, 16);
	ck_assert_int_eq(only_wall()->even.whole, 16);
	ck_assert_int_eq(only_wall()->whole_blocks, 48);
	ck_assert_int_eq(only_wall()->cut_pieces, 0);
	ck_assert_uint_eq(beds.takeoff.snags.count, 0);
}
END_TEST

START_TEST(outside_4_by_8_ft_with_8_in_block_the_inside_is_17_78_sq_ft)
{
	/* By arithmetic: 2 ft 8 in by 6 ft 8 in. */
	rectangle(8, 4);
	beds_lay(&beds);
	ck_assert_double_eq_tol(only_wall()->inner_area, 17.777778 * 0.09290304, 1e-7);
	ck_assert_int_eq(only_wall()->inner_perimeter, 2 * INCH * (32 + 80));
}
END_TEST

START_TEST(a_wall_weighs_what_its_blocks_do)
{
	/* 16 x 8 x 6 in at 135 lb/cu ft: 4/9 cu ft, 60 lb; 48 of them 2,880 lb. A pound is
	 * 0.45359237 kg. */
	rectangle(8, 4);
	beds_lay(&beds);
	ck_assert_double_eq_tol(only_wall()->block_weight, 60 * 0.45359237, 1e-6);
	ck_assert_double_eq_tol(only_wall()->weight, 2880 * 0.45359237, 1e-4);
	ck_assert_double_eq_tol(beds.takeoff.cuttings.list[0].weight, 2880 * 0.45359237, 1e-4);
}
END_TEST

START_TEST(adhesive_lies_under_every_course_but_the_first_and_under_the_cap)
{
	/* Runs of a course: 24 ft less 32 in. Cap 4 in deep: 24 ft less 16 in. Two beads by
	 * default. */
	rectangle(8, 4);
	beds_lay(&beds);
	ck_assert_double_eq_tol(only_wall()->bead, 2 * 2 * metres(256 * INCH), 1e-9);
	beds_fini(&beds);
	rectangle(8, 4);
	plot_set(&beds.plot, 'b', BED_CAP, "12 in x 4 in x 2 in");
	plot_set(&beds.plot, 0, ALLOW_BEADS, "3");
	beds_lay(&beds);
	ck_assert(only_wall()->has_cap);
	ck_assert_double_eq_tol(only_wall()->bead, 3 * metres((2 * 256 + 272) * INCH), 1e-9);
}
END_TEST

START_TEST(adhesive_is_bought_with_its_spare_in_whole_cartridges)
{
	/* 8 x 4 ft, three courses: 2 x 2 beads of 256 in are 85 ft 4 in, over 30 ft 2.844
	 * cartridges; with 10 % 3.13, so four; without spare three. */
	static const struct {
		const char *share;
		double spare, order;
	} spares[] = { { "10 %", 0.2844444, 4 }, { "0 %", 0, 3 } };

	for (int i = 0; i < 2; i++) {
		struct item_list items = { .arena = &beds.arena,
			.allow = &beds.plot.details.allow };

		rectangle(8, 4);
		plot_set(&beds.plot, 0, ALLOW_ADHESIVE_SPARE, spares[i].share);
		beds_lay(&beds);
		walls_items(&items, &beds.takeoff.walls);
		ck_assert_uint_eq(items.count, 1);
		ck_assert_double_eq_tol(items.list[0].laid, 2.8444444, 1e-6);
		ck_assert_double_eq_tol(items.list[0].spare, spares[i].spare, 1e-6);
		ck_assert_double_eq_tol(items.list[0].order, spares[i].order, 1e-9);
		beds_fini(&beds);
	}
	rectangle(1, 1);
}
END_TEST

START_TEST(a_single_course_has_no_second)
{
	rectangle(9, 5);
	beds_set_courses(&beds.plot, 1);
	beds_lay(&beds);
	ck_assert_int_eq(only_wall()->even.run_count, 0);
	ck_assert_int_eq(only_wall()->whole_blocks, only_wall()->odd.whole);
	ck_assert_int_eq(only_wall()->cut_pieces, only_wall()->odd.cut);
	ck_assert_double_eq(only_wall()->bead, 0);
}
END_TEST

START_TEST(a_cap_has_its_own_size_runs_and_corners)
{
	const struct wall *wall;

	rectangle(8, 4);
	plot_set(&beds.plot, 'b', BED_CAP, "12 in x 6 in x 2 in");
	beds_lay(&beds);
	wall = only_wall();
	ck_assert(wall->has_cap);
	ck_assert_int_eq(wall->cap_block.across, 6 * INCH);
	ck_assert_int_eq(wall->cap.run_count, 4);
	ck_assert_int_eq(wall->cap.length, 288 * INCH - 24 * INCH);
	ck_assert_int_ge(wall->cap.whole + wall->cap.cut, 22);
	ck_assert_int_eq(wall->whole_blocks, 48); /* without the cap */
}
END_TEST

START_TEST(a_bed_that_cannot_be_laid_out_takes_about_as_many_blocks_as_its_runs_hold)
{
	/* 4 x 2 cells of 6 in: P 6 ft; 3 courses of (72 - 32) in over 16 in are 7.5. */
	rectangle(4, 2);
	beds_set_cell(&beds.plot, 6 * INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 0);
	ck_assert_int_eq(beds.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].region, 0);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].about_blocks, 8);
	beds_fini(&beds);
	rectangle(1, 1); /* 24 in less 32: one at least */
	beds_set_cell(&beds.plot, 6 * INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].about_blocks, 1);
	beds_fini(&beds);
	rectangle(1, 1); /* 32 in less as many */
	beds_set_cell(&beds.plot, 8 * INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].about_blocks, 1);
}
END_TEST

/* In 1 ft there is no room for two walls of 8 in. */
START_TEST(what_is_not_laid_out_is_told_by_its_own_region)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "bbbb.c", "bbbb.c", "bbbb.c", "bbbb.c",
		NULL });
	beds_lay(&beds);
	ck_assert_int_eq(only_wall()->region, 0);
	ck_assert_int_eq(beds.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].region, 1);
}
END_TEST

START_TEST(a_hole_adds_four_depths_to_what_is_not_laid_out)
{
	/* A frame one cell of 1 ft wide round a hole: P 20 + 12 ft; (384 - 32 + 32) x 3 / 16 =
	 * 72. */
	plot_from_rows(&beds.plot, (const char *const[]){ "bbbbb", "b...b", "b...b", "b...b",
		"bbbbb", NULL });
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[0].about_blocks, 72);
}
END_TEST

START_TEST(only_raised_beds_are_walled_in_the_order_of_regions)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "aaaa.pp", "aaaa.pp", "aaaa.pp",
		"aaaa.pp",
		"bbbb...", "bbbbcc.", "bbbbcc.", "bbbb...", NULL });
	plot_set(&beds.plot, 'a', BED_BUILD, "level");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 2);
	for (int i = 0; i < 2; i++) {
		int region = beds.takeoff.walls.list[i].region;

		ck_assert_int_eq(beds.takeoff.survey.regions[region].entry->letter, "bc"[i]);
	}
}
END_TEST

START_TEST(a_bed_against_another_is_walled_all_round)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "aaaabbbb", "aaaabbbb", "aaaabbbb",
		"aaaabbbb", NULL });
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 2);
	ck_assert_int_eq(beds.takeoff.walls.list[0].odd.length, 192 * INCH - 32 * INCH);
	ck_assert_int_eq(beds.takeoff.walls.list[1].odd.length, 192 * INCH - 32 * INCH);
}
END_TEST

/* ---- Laws on beds at random ------------------------------------------------------------------ */

/* Beds with blocks, cells and courses at random, most of which can be laid. */
START_TEST(beds_of_one_shape_and_block_are_laid_once_whatever_their_letter)
{
	const struct wall *walls;

	plot_from_rows(&beds.plot, (const char *const[]){
		".......bbbb.", ".bbbb..bbbb.", ".bbbb..bbbb.", ".bbbb..bbbb.", ".bbbb.......",
		"........cccc", "...bb...cccc", "..bbb...cccc", "..bbb...cccc", ".dddd.......",
		".dddd.......", ".dddd.......", ".dddd.......", NULL });
	plot_set(&beds.plot, 'd', BED_COURSES, "4");
	beds_lay(&beds);
	walls = beds.takeoff.walls.list;
	ck_assert_int_eq(beds.takeoff.walls.count, 5);
	ck_assert_int_eq(walls[1].region, 1);
	ck_assert_ptr_eq(walls[1].odd.runs, walls[0].odd.runs);
	ck_assert_ptr_eq(walls[1].even.runs, walls[0].even.runs);
	ck_assert_double_eq(walls[1].weight, walls[0].weight);
	ck_assert_ptr_eq(walls[2].odd.runs, walls[0].odd.runs); /* of letter c */
	ck_assert_ptr_ne(walls[3].odd.runs, walls[0].odd.runs); /* has a jog */
	ck_assert_ptr_ne(walls[4].odd.runs, walls[0].odd.runs); /* a course more */
}
END_TEST

START_TEST(a_cap_without_room_is_missing_on_each_of_the_beds_alike)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "bbb.bbb.bbb", "bbb.bbb.bbb",
		"bbb.bbb.bbb", NULL });
	plot_set(&beds.plot, 'b', BED_CAP, "2 ft x 2 ft x 2 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 3);
	ck_assert_int_eq(beds.takeoff.walls.caps_not_laid, 3);
	ck_assert_int_eq(beds_snags(&beds, SNAG_CAP_NARROW), 3);
}
END_TEST

START_TEST(each_of_many_alike_has_its_snags_at_its_own_place)
{
	const struct snag *snags;

	plot_from_rows(&beds.plot, (const char *const[]){
		"..........", "...bbb....", ".bbbbb....", ".bbbbb....", "......bbb.", "....bbbbb.",
		"....bbbbb.", NULL });
	beds_set_block(&beds.plot, 36 * NM_PER_INCH, 6 * NM_PER_INCH, 6 * NM_PER_INCH);
	beds_lay(&beds);
	snags = beds.takeoff.snags.list;
	ck_assert_int_eq(beds.takeoff.walls.not_laid_count, 2);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[1].region, 1);
	ck_assert_int_eq(beds.takeoff.walls.not_laid[1].about_blocks,
		beds.takeoff.walls.not_laid[0].about_blocks);
	ck_assert_uint_eq(beds.takeoff.snags.count, 2);
	for (int i = 0; i < 2; i++) {
		ck_assert_int_eq(snags[i].code, SNAG_WALL_JOG);
		ck_assert_int_eq(snags[i].region, i);
		ck_assert_int_eq(snags[i].side, snags[0].side);
		ck_assert_int_eq(snags[i].figures[0], 12 * NM_PER_INCH);
	}
	ck_assert_int_eq(snags[1].cell.x, snags[0].cell.x + 3);
	ck_assert_int_eq(snags[1].cell.y, snags[0].cell.y + 3);
}
END_TEST

static void lay_at_random(struct random *random)
{
	static const nm cells[] = { 12 * INCH, 6 * INCH, 18 * INCH, 4 * INCH, 300 * NM_PER_MM,
		200 * NM_PER_MM };
	struct size block = beds_random_block(random);
	nm cell = cells[random_below(random, 6)];
	nm shortest = bond_shortest(block.along, 3 * INCH);
	nm least = 2 * block.across > block.across + shortest ? 2 * block.across :
		block.across + shortest;

	int strip = (int)(least / cell) + random_between(random, 0, 1);

	beds_at_random(&beds.plot, random, strip ? strip : 1, 4);
	beds_set_cell(&beds.plot, cell);
	beds_set_block(&beds.plot, block.along, block.across, block.up);
	beds_set_courses(&beds.plot, random_between(random, 1, 6));
	block.along = block.along * random_between(random, 50, 100) / 100;
	if (random_below(random, 2))
		block_set(&beds.plot.details.legend[0].block, BED_CAP,
			(struct value){ .set = true, .as.size = block });
	beds_lay(&beds);
}

/* A run as a rectangle on the plan: along its side from `from` on, depth to the right. */
static struct geos_box box_of(const struct wall_run *run, const struct outline *outline, nm depth)
{
	const struct loop *loop = &outline->loops[run->loop];
	const struct corner *a = &loop->corners[run->side];
	const struct corner *b = &loop->corners[(run->side + 1) % loop->count];
	double cell = metres(beds.takeoff.survey.cell);
	int x = (b->x > a->x) - (b->x < a->x), y = (b->y > a->y) - (b->y < a->y);
	double from = metres(run->from), to = metres(run->from + run->length), w = metres(depth);
	double x0 = a->x * cell + x * from, y0 = a->y * cell + y * from;
	double x1 = a->x * cell + x * to - y * w, y1 = a->y * cell + y * to + x * w;

	return (struct geos_box){ fmin(x0, x1), fmin(y0, y1), fmax(x0, x1), fmax(y0, y1) };
}

/* The runs of a course cover the ring, all of it and nothing else, and nothing twice. */
static void check_tiling(GEOSContextHandle_t geos, const struct wall_course *course,
	const struct outline *outline, nm depth, const GEOSGeometry *ring)
{
	static struct geos_box boxes[2000];
	double sum = 0;
	GEOSGeometry *runs;

	ck_assert_int_le(course->run_count, 2000);
	for (int i = 0; i < course->run_count; i++) {
		boxes[i] = box_of(&course->runs[i], outline, depth);
		sum += (boxes[i].right - boxes[i].left) * (boxes[i].bottom - boxes[i].top);
	}
	runs = geos_union(geos, boxes, (size_t)course->run_count);
	ck_assert_double_eq_tol(geos_area(geos, runs), sum, 1e-7);
	ck_assert_double_lt(geos_apart(geos, runs, ring), 1e-7);
	geos_free(geos, runs);
}

static void check_wall(GEOSContextHandle_t geos, const struct wall *wall)
{
	GEOSGeometry *bed = beds_shape(geos, &beds.takeoff.survey, wall->region);
	GEOSGeometry *inner = geos_offset(geos, bed, -metres(wall->block.across));
	GEOSGeometry *ring = geos_difference(geos, bed, inner);
	struct outline outline;

	outline_trace(&outline, &beds.arena, &beds.plot, &beds.takeoff.survey, wall->region);
	ck_assert_double_eq_tol(wall->inner_area, geos_area(geos, inner), 1e-7);
	ck_assert_double_eq_tol(metres(wall->inner_perimeter), geos_perimeter(geos, inner), 1e-6);
	check_tiling(geos, &wall->odd, &outline, wall->block.across, ring);
	if (wall->courses > 1)
		check_tiling(geos, &wall->even, &outline, wall->block.across, ring);
	geos_free(geos, bed);
	geos_free(geos, inner);
	geos_free(geos, ring);
	if (wall->has_cap) {
		bed = beds_shape(geos, &beds.takeoff.survey, wall->region);
		inner = geos_offset(geos, bed, -metres(wall->cap_block.across));
		ring = geos_difference(geos, bed, inner);
		check_tiling(geos, &wall->cap, &outline, wall->cap_block.across, ring);
		geos_free(geos, bed);
		geos_free(geos, inner);
		geos_free(geos, ring);
	}
}

START_TEST(in_every_course_the_runs_tile_the_bed_less_what_is_inside)
{
	GEOSContextHandle_t geos = geos_start();
	struct random random = { 81 };
	int walls = 0, holes = 0;

	for (int n = 0; n < 300; n++) {
		lay_at_random(&random);
		for (int i = 0; i < beds.takeoff.walls.count; i++) {
			const struct wall *wall = &beds.takeoff.walls.list[i];

			check_wall(geos, wall);
			walls++;
			holes += region_holes(&beds.takeoff.survey.regions[wall->region]) > 0;
		}
		beds_fini(&beds);
	}
	geos_end(geos);
	ck_assert_int_gt(walls, 200);
	ck_assert_int_gt(holes, 3);
}
END_TEST

static void check_counts(const struct wall *wall)
{
	int64_t whole = 0, cut = 0;
	nm laid = 0;
	double density = 135 * 0.45359237 / pow(0.3048, 3);

	for (int c = 1; c <= wall->courses; c++) {
		const struct wall_course *course = c % 2 ? &wall->odd : &wall->even;

		for (int i = 0; i < course->run_count; i++) {
			for (int p = 0; p < course->runs[i].piece_count; p++) {
				whole += course->runs[i].pieces[p] == wall->block.along;
				cut += course->runs[i].pieces[p] != wall->block.along;
				laid += course->runs[i].pieces[p];
			}
		}
	}
	ck_assert_int_eq(wall->whole_blocks, whole);
	ck_assert_int_eq(wall->cut_pieces, cut);
	ck_assert_double_eq_tol(wall->weight, metres(laid) * metres(wall->block.across) *
		metres(wall->block.up) * density, 1e-5 * wall->weight);
	ck_assert_double_eq_tol(wall->block_weight, metres(wall->block.along) *
		metres(wall->block.across) * metres(wall->block.up) * density, 1e-5);
}

START_TEST(blocks_pieces_and_weight_are_those_of_the_courses_laid)
{
	struct random random = { 82 };

	for (int n = 0; n < 300; n++) {
		lay_at_random(&random);
		for (int i = 0; i < beds.takeoff.walls.count; i++)
			check_counts(&beds.takeoff.walls.list[i]);
		beds_fini(&beds);
	}
}
END_TEST

/* Either its wall is laid or a snag tells why not. */
static void check_each_bed(void)
{
	bool has_snag[1000] = { false };

	ck_assert_int_eq(beds.takeoff.walls.count + beds.takeoff.walls.not_laid_count,
		beds.takeoff.survey.region_count);
	for (size_t i = 0; i < beds.takeoff.snags.count; i++)
		if (beds.takeoff.snags.list[i].code <= SNAG_WALL_NARROW)
			has_snag[beds.takeoff.snags.list[i].region] = true;
	for (int i = 0; i < beds.takeoff.walls.count; i++)
		ck_assert(!has_snag[beds.takeoff.walls.list[i].region]);
	for (int i = 0; i < beds.takeoff.walls.not_laid_count; i++)
		ck_assert(has_snag[beds.takeoff.walls.not_laid[i].region]);
}

START_TEST(each_raised_bed_is_either_laid_or_named_with_its_snag)
{
	struct random random = { 83 };
	int without = 0;

	for (int n = 0; n < 300; n++) {
		lay_at_random(&random);
		check_each_bed();
		without += beds.takeoff.walls.not_laid_count;
		beds_fini(&beds);
	}
	ck_assert_int_gt(without, 10);
}
END_TEST

START_TEST(fewer_than_two_in_a_hundred_formal_walls_do_not_bond)
{
	struct random random = { 84 };
	int walls = 0, unbonded = 0;

	for (int n = 0; n < 400; n++) {
		struct size block = beds_random_block(&random);
		nm cell = 6 * INCH * random_between(&random, 1, 4);
		int last = NO_REGION;

		beds_formal(&beds.plot, &random,
			(int)(2 * block.across / cell) + random_between(&random, 1, 3));
		beds_set_cell(&beds.plot, cell);
		beds_set_block(&beds.plot, block.along, block.across, block.up);
		beds_lay(&beds);
		walls += beds.takeoff.walls.count;
		for (size_t i = 0; i < beds.takeoff.snags.count; i++) {
			const struct snag *snag = &beds.takeoff.snags.list[i];

			/* Sides of one bed seldom stand apart in reading order; counted twice is
			 * on the safe side. */
			if (snag->code == SNAG_WALL_BOND && snag->region != last) {
				last = snag->region;
				unbonded++;
			}
		}
		beds_fini(&beds);
	}
	ck_assert_int_gt(walls, 1000);
	ck_assert_double_lt(unbonded, 0.02 * walls);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("wall");
	TCase *known = suite_case(suite, "known walls");
	TCase *random = suite_case(suite, "walls at random");

	tcase_add_checked_fixture(known, NULL, teardown);
	tcase_add_test(known, a_house_of_20_by_16_ft_takes_52_blocks_a_course_and_624_in_all);
	tcase_add_test(known,
		a_building_of_20_by_8_ft_takes_480_where_the_outside_perimeter_says_504);
	tcase_add_test(known, a_face_of_100_by_10_ft_takes_75_a_course_and_1125_in_15);
	tcase_add_test(known,
		a_hundred_square_feet_of_face_take_112_and_a_half_8_by_16_in_blocks);
	tcase_add_test(known, a_bed_of_4_by_8_ft_takes_16_a_course_and_48_in_all);
	tcase_add_test(known, outside_4_by_8_ft_with_8_in_block_the_inside_is_17_78_sq_ft);
	tcase_add_test(known, a_wall_weighs_what_its_blocks_do);
	tcase_add_test(known, adhesive_lies_under_every_course_but_the_first_and_under_the_cap);
	tcase_add_test(known, adhesive_is_bought_with_its_spare_in_whole_cartridges);
	tcase_add_test(known, a_single_course_has_no_second);
	tcase_add_test(known, a_cap_has_its_own_size_runs_and_corners);
	tcase_add_test(known,
		a_bed_that_cannot_be_laid_out_takes_about_as_many_blocks_as_its_runs_hold);
	tcase_add_test(known, what_is_not_laid_out_is_told_by_its_own_region);
	tcase_add_test(known, a_hole_adds_four_depths_to_what_is_not_laid_out);
	tcase_add_test(known, only_raised_beds_are_walled_in_the_order_of_regions);
	tcase_add_test(known, a_bed_against_another_is_walled_all_round);
	tcase_add_test(known, beds_of_one_shape_and_block_are_laid_once_whatever_their_letter);
	tcase_add_test(known, a_cap_without_room_is_missing_on_each_of_the_beds_alike);
	tcase_add_test(known, each_of_many_alike_has_its_snags_at_its_own_place);

	tcase_add_test(random, in_every_course_the_runs_tile_the_bed_less_what_is_inside);
	tcase_add_test(random, blocks_pieces_and_weight_are_those_of_the_courses_laid);
	tcase_add_test(random, each_raised_bed_is_either_laid_or_named_with_its_snag);
	tcase_add_test(random, fewer_than_two_in_a_hundred_formal_walls_do_not_bond);
	return suite;
}
