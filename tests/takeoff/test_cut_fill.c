/* Cut and fill: published examples, cases by hand, random ground against sums over a fine lattice
 * of points. */
#include "takeoff/ground/cut_fill.h"
#include "support/digging.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { RANDOM_PLOTS = 60, SIDE = 12 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct cut_fills *volumes(void)
{
	return &garden.takeoff.levelling.volumes;
}

static void volumes_are(const struct cut_fill *found, double cut, double fill)
{
	ck_assert_double_eq_tol(found->cut / CUBIC_FOOT, cut, EXACT * (1 + cut));
	ck_assert_double_eq_tol(found->fill / CUBIC_FOOT, fill, EXACT * (1 + fill));
	ck_assert_double_eq_tol(found->net / CUBIC_FOOT, cut - fill, EXACT * (1 + cut + fill));
}

/* ---- Published values ------------------------------------------------------------------------ */

/* A square of 50 ft whose corners have such drops, in 5 x 5 cells of 10 ft of a letter. */
static void square_of_50_ft(char letter, const char *drops, const char *finish)
{
	garden_rectangle(&garden, letter, 5, 5);
	plot_set(&garden.plot, 0, HEAD_CELL, "10 ft");
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_add_lines(&garden.plot, drops);
	plot_add_lines(&garden.plot, finish);
}

/* Pearson, Estimating in Building Construction, its edition not noted, example 9-5: one cell of 50
 * ft with cuts of 0.1, 0.8, 0 and 0 ft at its corners is 563 cu ft. */
START_TEST(a_published_cell_of_50_ft_is_563_cu_ft)
{
	square_of_50_ft('l', "levels 50 ft\n  0.7 ft, 0 ft\n  0.8 ft, 0.8 ft\n",
		"finish 0,0 0.8 ft\n");
	plot_set(&garden.plot, 'l', LAWN_COVER, "none");
	garden_count(&garden);
	volumes_are(&volumes()->by_unit_areas, 562.5, 0);
	volumes_are(&volumes()->finished, 562.5, 0);
	volumes_are(&volumes()->formation, 562.5, 0);
	ck_assert_double_eq(round(volumes()->formation.cut / CUBIC_FOOT * 1.0001), 563);
}
END_TEST

/* The same, example 9-8: cuts of 1.4, 1.4, 1.2 and 1.3 ft at the corners of 2,500 sq ft, after 0.50
 * ft of pavement, are 3,313 cu ft, 123 cu yd. The finished ground is 0.50 ft higher than where
 * those end: 0.9, 0.9, 0.7 and 0.8 ft below what is there. */
START_TEST(a_published_cut_below_pavement_is_3313_cu_ft)
{
	square_of_50_ft('p', "levels 50 ft\n  0.1 ft, 0.1 ft\n  0.3 ft, 0.2 ft\n",
		"finish 0,0 1 ft\n");
	plot_set(&garden.plot, 'p', PATH_BASE, "4 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "2 in");
	garden_count(&garden);
	volumes_are(&volumes()->formation, 3312.5, 0);
	volumes_are(&volumes()->by_unit_areas, 3312.5 - 1250, 0);
	ck_assert_double_eq(round(volumes()->formation.cut / CUBIC_YARD), 123);
	ck_assert_double_eq_tol(garden.takeoff.earthwork.bank_all / CUBIC_FOOT, 3312.5, 1e-6);
}
END_TEST

/* The same, example 9-6: with a fill of 0.3 ft at one corner and a cut of 0.7 ft at the next, 50 ft
 * apart, nothing is cut or filled 15 ft from the first. */
START_TEST(a_published_line_of_no_cut_is_15_ft_from_the_corner)
{
	struct surface surface;
	nm at = 15 * NM_PER_FOOT;

	square_of_50_ft('l', "levels 50 ft\n  1.3 ft, 0.3 ft\n  1.3 ft, 0.3 ft\n",
		"finish 0,0 1 ft\n");
	surface = surface_of(&garden.plot);
	ck_assert_int_eq(surface_existing(&surface, at, 0), surface_finished(&surface, at, 0));
}
END_TEST

/* By hand: 4 squares of 10 ft, the middle 1 ft above the finished ground, all else on it: of the
 * points h1 and h2 are 0, h4 is 1. */
START_TEST(the_middle_of_four_unit_areas_counts_four_times)
{
	static const nm heights[] = { 0, 0, 0, 0, NM_PER_FOOT, 0, 0, 0, 0 };
	static const nm lines[] = { 0, 10 * NM_PER_FOOT, 20 * NM_PER_FOOT };
	struct cut_fill sum = unit_areas(heights, lines, 3, lines, 3);

	volumes_are(&sum, 100 / 4.0 * 4, 0);
}
END_TEST

/* ---- By hand --------------------------------------------------------------------------------- */

/* 8 x 4 ft, level 6 in below the string on its left half, 6 in deeper on its right side; finished 9
 * in below the string. On the left 3 in are cut; on the right, from 6 to 12 in, at the middles of
 * cells 6.75, 8.25, 9.75 and 11.25 in: 2.25 and 0.75 in are cut, as much filled. */
static void half_slope(char letter)
{
	garden_rectangle(&garden, letter, 8, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  6 in, 6 in, 12 in\n  6 in, 6 in, 12 in\n"
		"finish 0,0 9 in\n");
}

START_TEST(each_cell_is_cut_or_filled_by_its_middle)
{
	half_slope('l');
	plot_set(&garden.plot, 'l', LAWN_COVER, "none");
	garden_count(&garden);
	volumes_are(&volumes()->finished, 4 * (4 * 3 + 3) / 12.0, 4 * 3 / 12.0);
	/* Of unit areas the corners of the right one have cuts of 3 in and fills of 3 in. */
	volumes_are(&volumes()->by_unit_areas, 4 + 16 / 4.0 * 2 * 3 / 12,
		16 / 4.0 * 2 * 3 / 12);
	ck_assert_double_eq_tol(garden.takeoff.levelling.apart, 0, 1e-12);
}
END_TEST

/* The same of a path, 6 in deeper: 9 in on the left, at the middles of cells on the right 8.25,
 * 6.75, 5.25 and 3.75 in: 2 in of each are sod. */
START_TEST(the_dig_of_a_zone_is_from_the_ground_to_its_formation)
{
	const struct earthwork *work = &garden.takeoff.earthwork;

	half_slope('p');
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	garden_count(&garden);
	volumes_are(&volumes()->formation, 4 * (4 * 9 + 24) / 12.0, 0);
	ck_assert_int_eq(work->count, 1);
	ck_assert_double_eq_tol(work->bank.sod / CUBIC_FOOT, 32 * 2 / 12.0, EXACT);
	ck_assert_double_eq_tol(work->bank.topsoil / CUBIC_FOOT,
		4 * (7 * 3 + 1.75) / 12.0, EXACT);
	ck_assert_double_eq_tol(work->bank.subsoil / CUBIC_FOOT,
		4 * (4 * 4 + 3.25 + 1.75 + 0.25) / 12.0, EXACT);
	ck_assert_int_eq(work->deepest, 9 * NM_PER_INCH);
	ck_assert_double_eq_tol(work->stripped / SQUARE_FOOT, 32, EXACT);
}
END_TEST

/* A bed of 8 x 4 ft on ground that falls 1 in a foot to the right: lowest 8 in below the string;
 * embed 2 in and base 4 in below that are 14 in. Wall and base have all but 76 x 28 in, the mean of
 * that ground lies 4 in below the string: 10 in are dug on the mean. */
START_TEST(under_walls_the_dig_is_level)
{
	static const double area = 32 - 76 * 28 / 144.0;
	const struct levelling *levelling = &garden.takeoff.levelling;

	garden_rectangle(&garden, 'b', 8, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  0 in, 4 in, 8 in\n  0 in, 4 in, 8 in\n");
	garden_count(&garden);
	volumes_are(&volumes()->formation, area * 10 / 12, 0);
	for (int i = 0; i < 3; i++) {
		ck_assert_int_eq(levelling->points[i].dig, (14 - 4 * i) * NM_PER_INCH);
		ck_assert_int_eq(levelling->points[i].formation, 14 * NM_PER_INCH);
	}
	/* So is what is dug out within them: to the base's top, at 10 in. */
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	garden_count(&garden);
	volumes_are(&volumes()->formation, area * 10 / 12 + (32 - area) * 6 / 12, 0);
}
END_TEST

/* The same bed on level ground that is lowered by 3 in: sod comes off the wall's ground for good,
 * off what is within for a time; there 3 in of topsoil go. */
START_TEST(sod_within_walls_is_kept_where_ground_is_graded)
{
	static const double area = 32 - 76 * 28 / 144.0;
	const struct earthwork *work = &garden.takeoff.earthwork;

	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "20 in");
	plot_add_lines(&garden.plot, "levels 8 ft\n  6 in, 6 in\n  6 in, 6 in\n"
		"finish 0,0 9 in\n");
	garden_count(&garden);
	volumes_are(&volumes()->formation, area * 9 / 12 + (32 - area) * 3 / 12, 0);
	ck_assert_double_eq_tol(work->bank.sod / CUBIC_FOOT, area * 2 / 12, EXACT);
	ck_assert_double_eq_tol(work->bank.topsoil / CUBIC_FOOT,
		area * 7 / 12 + (32 - area) * 3 / 12, EXACT);
	ck_assert_double_eq_tol(work->stripped / SQUARE_FOOT, area, EXACT);
	ck_assert_double_eq_tol(work->loosened / SQUARE_FOOT, 32 - area, EXACT);
}
END_TEST

START_TEST(open_ground_is_graded_where_a_finish_is_told_and_else_is_left)
{
	garden_rectangle(&garden, '.', 4, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  6 in, 6 in\n  6 in, 6 in\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.earthwork.count, 0);
	volumes_are(&volumes()->formation, 0, 0);
	plot_add_lines(&garden.plot, "finish 0,0 9 in\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.earthwork.count, 1);
	ck_assert_int_eq(garden.takeoff.earthwork.rows[0].part, DIG_GRADED);
	ck_assert_int_eq(garden.takeoff.earthwork.rows[0].region, NO_REGION);
	volumes_are(&volumes()->formation, 4, 0);
}
END_TEST

START_TEST(the_survey_beyond_the_plan_is_not_counted)
{
	/* 5 x 3 ft under drops of 4 ft: one whole square across and a quarter of the next, three
	 * quarters down; 1 in deeper for each ft across. */
	garden_rectangle(&garden, '.', 5, 3);
	plot_add_lines(&garden.plot, "levels 4 ft\n  10 in, 6 in, 2 in\n  10 in, 6 in, 2 in\n"
		"finish 0,0 10 in\n");
	garden_count(&garden);
	volumes_are(&volumes()->finished, 3 * (0.5 + 1.5 + 2.5 + 3.5 + 4.5) / 12, 0);
	volumes_are(&volumes()->by_unit_areas, 3 * (0.5 + 1.5 + 2.5 + 3.5 + 4.5) / 12, 0);
}
END_TEST

START_TEST(a_line_of_the_survey_parts_a_cell)
{
	/* One cell of 4 ft: 2 ft of it 3 in above, 2 ft of it 1 in below, by slopes of 6 and 10 in
	 * to either side of the line between them. */
	garden_rectangle(&garden, '.', 1, 1);
	plot_set(&garden.plot, 0, HEAD_CELL, "4 ft");
	plot_add_lines(&garden.plot, "levels 2 ft\n  6 in, 8 in, 14 in\n  6 in, 8 in, 14 in\n"
		"  6 in, 8 in, 14 in\nfinish 0,0 10 in\n");
	garden_count(&garden);
	volumes_are(&volumes()->finished, 8 * 3 / 12.0, 8 * 1 / 12.0);
	ck_assert_int_eq(volumes()->square_count, 4);
	ck_assert_double_eq_tol(volumes()->squares[1].fill / CUBIC_FOOT, 4 / 12.0, EXACT);
	ck_assert_int_eq(volumes()->squares[1].deepest, NM_PER_INCH);
	ck_assert_int_eq(volumes()->squares[1].right, 2 * NM_PER_FOOT);
	ck_assert(volumes()->squares[0].fill == 0 && volumes()->squares[2].fill == 0);
}
END_TEST

/* The ground rises from 8 in below the finished one at the left to it at the right: at the middles
 * of cells it is 7, 5, 3 and 1 in below. */
START_TEST(low_ground_is_as_deep_as_its_deepest_part)
{
	garden_rectangle(&garden, '.', 4, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  12 in, 4 in\n  12 in, 4 in\n"
		"finish 0,0 4 in\n");
	garden_count(&garden);
	ck_assert_int_eq(volumes()->square_count, 1);
	ck_assert_double_eq_tol(volumes()->squares[0].fill / CUBIC_FOOT, 4 * 16 / 12.0, EXACT);
	ck_assert_int_eq(volumes()->squares[0].deepest, 7 * NM_PER_INCH);
}
END_TEST

/* Level ground that is raised by 6 in: the bed of under_walls_the_dig_is_level has its base's top 2
 * in and its formation 6 in below that, where the ground is. Within it 6 in are filled. */
START_TEST(low_ground_within_undug_walls_is_filled)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_add_lines(&garden.plot, "levels 8 ft\n  12 in, 12 in\n  12 in, 12 in\n"
		"finish 0,0 6 in\n");
	garden_count(&garden);
	volumes_are(&volumes()->formation, 0, 76 * 28 / 144.0 * 6 / 12);
	ck_assert_double_eq_tol(volumes()->others.fill / CUBIC_FOOT, 76 * 28 / 144.0 * 6 / 12,
		EXACT);
}
END_TEST

/* A knoll of 24 in amid a bed of 8 x 8 ft that is to be level: in the middles of the cells next to
 * its top it is 24 in x 7/8 x 7/8 high, under walls a good deal less. */
START_TEST(the_deepest_cut_may_be_within_undug_walls)
{
	garden_rectangle(&garden, 'b', 8, 8);
	plot_add_lines(&garden.plot, "levels 4 ft\n  24 in, 24 in, 24 in\n  24 in, 0 in, 24 in\n"
		"  24 in, 24 in, 24 in\nfinish 0,0 24 in\n");
	garden_count(&garden);
	ck_assert_double_eq_tol((double)garden.takeoff.earthwork.deepest / (double)NM_PER_INCH,
		24 * 49 / 64.0, 1e-6);
}
END_TEST

/* A raised bed of 6 x 6 ft in 8 x 8 ft, its inside undug, its block 12 x 8 x 6 in, embed 4 in, base
 * 5 in. The ground falls by 1/2 in a foot to the right: 0 in at 0, 4 in at 8 ft. */
static void bed_on_a_plane(void)
{
	garden_rows(&garden, (const char *const[]){ "........", ".bbbbbb.", ".bbbbbb.", ".bbbbbb.",
		".bbbbbb.", ".bbbbbb.", ".bbbbbb.", "........", NULL });
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 8 in x 6 in");
	plot_set(&garden.plot, 'b', BED_EMBED, "4 in");
	plot_set(&garden.plot, 'b', BED_BASE, "5 in");
	plot_set(&garden.plot, 'b', BED_REACH, "6 in");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "2 in");
	plot_add_lines(&garden.plot, "levels 8 ft\n  0 in, 4 in\n  0 in, 4 in\n");
	garden_count(&garden);
}

static double bank_of(enum dig_part part)
{
	return garden.takeoff.earthwork.sums[part].bank / CUBIC_FOOT;
}

/* The bed's ground is lowest at 7 ft: 3 1/2 in. So the formation is at 3 1/2 + 4 + 5 = 12 1/2 in.
 * The base is a square ring from 1/2 to 7 1/2 ft, 7 x 7 ft, less 10 in inside the walls' faces,
 * from 1 ft 10 in to 6 ft 2 in, 4 1/3 ft: 49 - 18 7/9 sq ft. Its middle is at 4 ft, where the
 * ground is at 2 in: 10 1/2 in on an average; 9 in by the embed alone. Deepest is the part from
 * 1/2 to 1 ft, whose middle is at 3/8 in. */
START_TEST(a_wall_on_a_plane_is_dug_down_to_its_level_formation)
{
	double ring = 49 - 169 / 9.0;

	bed_on_a_plane();
	ck_assert_double_eq_tol(bank_of(DIG_WALL), ring * 10.5 / 12, 1e-5);
	ck_assert_double_eq_tol(volumes()->formation.cut / CUBIC_FOOT, ring * 10.5 / 12, 1e-5);
	ck_assert_double_eq_tol((double)garden.takeoff.earthwork.deepest / (double)NM_PER_INCH,
		12.125, 1e-5);
	ck_assert_double_eq_tol(volumes()->finished.cut + volumes()->finished.fill, 0, 1e-12);
}
END_TEST

/* Over the base outside the wall, 49 - 36 sq ft round the same middle, stone lies at 7 1/2 in, on
 * an average 5 1/2 in below the ground: so much goes back. */
START_TEST(what_goes_back_over_its_base_goes_by_the_level_too)
{
	bed_on_a_plane();
	ck_assert_double_eq_tol(garden.takeoff.over_bases.backfill / CUBIC_FOOT, 13 * 5.5 / 12,
		1e-5);
}
END_TEST

/* ---- Any ground ------------------------------------------------------------------------------ */

/* Written here anew, in feet and by another formula than the survey's: weights of the four drops
 * around. */
static double existing_at(const struct levels *levels, double right, double down)
{
	double step = (double)levels->step / (double)NM_PER_FOOT, x = right / step, y = down / step;
	int column = x >= levels->columns - 1 ? levels->columns - 2 : (int)x;
	int row = y >= levels->rows - 1 ? levels->rows - 2 : (int)y;
	double sum = 0;

	for (int i = row; i <= row + 1; i++)
		for (int j = column; j <= column + 1; j++)
			sum += (double)levels->drops[i * levels->columns + j] *
				(1 - fabs(x - j)) * (1 - fabs(y - i));
	return sum / (double)NM_PER_FOOT;
}

/* 6 % towards the east from 4 in at the datum; away from a house whose front is the plan's left
 * side, as long. */
static double finished_at(int way, double right)
{
	return way == 0 ? 4 / 12.0 : 4 / 12.0 + 0.06 * right;
}

static const char *const finishes[] = { "finish 0,0 4 in\n",
	"finish 0,0 4 in\nfall 6 % towards 90\n",
	"finish 0,0 4 in\nfall 6 % away\nhouse \"Home\"\n  from -9,-99 to 0,99\n" };

/* Drops so many half cells apart. */
static void level_at_random(struct random *random, int way, int halves)
{
	struct text lines = TEXT_EMPTY;
	nm cell = plot_cell(&garden.plot), step = cell * halves / 2;
	int64_t columns = levels_count(garden.plot.ground.columns, cell, step);
	int64_t rows = levels_count(garden.plot.ground.rows, cell, step);

	text_add(&lines, "levels ");
	length_write(&lines, step, UNITS_IMPERIAL);
	text_add(&lines, "\n");
	for (int i = 0; i < rows; i++)
		for (int j = 0; j < columns; j++)
			text_print(&lines, "%s%d mm%s", j ? ", " : "  ",
				random_below(random, 400), j + 1 < columns ? "" : "\n");
	plot_add_lines(&garden.plot, lines.bytes);
	plot_add_lines(&garden.plot, finishes[way]);
	text_fini(&lines);
}

static double height_at(int way, double right, double down)
{
	return finished_at(way, right) -
		existing_at(&garden.plot.details.levels, right, down);
}

/* How far the formation of a zone is below the finished ground at a point in feet. Walls are level:
 * that ground falls to the right, so it is lowest at the bed's right end. */
static double zone_depth_at(const struct zone *zone, int way, double right)
{
	const struct region *region = &garden.takeoff.survey.regions[zone->region];
	double depth = (double)zone_depth(&garden.takeoff.embeds, zone) / (double)NM_PER_FOOT;
	double cell = (double)plot_cell(&garden.plot) / (double)NM_PER_FOOT;

	return zone->part != DIG_WALL && zone->part != DIG_INSIDE ? depth :
		depth + finished_at(way, (region->most.x + 1) * cell) - finished_at(way, right);
}

/* The same by the ground of the zones. */
static double depth_at(const struct cover *ground, int way, double right, double down)
{
	nm x = llround(right * (double)NM_PER_FOOT), y = llround(down * (double)NM_PER_FOOT);

	for (size_t i = 0; i < ground->count; i++) {
		const struct cover_box *piece = &ground->pieces[i];

		if (piece->left <= x && x < piece->right && piece->top <= y && y < piece->bottom)
			return zone_depth_at(&garden.takeoff.zones.list[piece->owner], way, right);
	}
	return 0;
}

/* Every height to the formation, point by point: cuts and fills apart. */
static struct cut_fill sum_of_points(int way)
{
	/* Points to a foot: in the middles of half inches, between which all lines run. */
	enum { FINE = 24 };
	const struct ground *plan = &garden.plot.ground;
	struct zones_ground ground = garden_ground(&garden);
	double step = (double)plot_cell(&garden.plot) / (double)NM_PER_FOOT / FINE;
	struct cut_fill sum = { 0, 0, 0 };

	for (int y = 0; y < plan->rows * FINE; y++) {
		for (int x = 0; x < plan->columns * FINE; x++) {
			double right = (x + 0.5) * step, down = (y + 0.5) * step;
			double height = (height_at(way, right, down) +
				depth_at(&ground.cover, way, right, down)) * step * step;

			*(height > 0 ? &sum.cut : &sum.fill) += fabs(height);
		}
	}
	arena_clear(&ground.arena);
	sum.net = sum.cut - sum.fill;
	return sum;
}

START_TEST(any_ground_is_cut_and_filled_as_much_as_a_lattice_of_points_says)
{
	struct random random = { 900 + (uint64_t)_i };

	for (int i = 0; i < runner_count(RANDOM_PLOTS / 3, 8 * RANDOM_PLOTS); i++) {
		const struct ground *plan = &garden.plot.ground;
		struct cut_fill points;
		double area;

		plot_at_random(&garden.plot, &random, SIDE, "bplS..");
		level_at_random(&random, _i, random_between(&random, 1, 7));
		garden_count(&garden);
		points = sum_of_points(_i);
		area = (double)(plan->columns * plan->rows);
		ck_assert_double_eq_tol(volumes()->formation.net / CUBIC_FOOT, points.net, 1e-6);
		/* A part of a cell that is cut here and filled there counts as its middle. */
		ck_assert_double_le(volumes()->formation.cut / CUBIC_FOOT, points.cut + 1e-6);
		ck_assert_double_ge(volumes()->formation.cut / CUBIC_FOOT, points.cut - 0.2 * area);
		garden_fini(&garden);
	}
}
END_TEST

/* Open ground alone, lines of the survey on those of cells: no line between points. Each cell is
 * summed up by itself. */
START_TEST(open_ground_is_cut_and_filled_cell_by_cell_as_points_say)
{
	struct random random = { 31 };

	for (int i = 0; i < runner_count(RANDOM_PLOTS, 8 * RANDOM_PLOTS); i++) {
		struct cut_fill sum = { 0, 0, 0 };
		int way = i % 3, columns = random_between(&random, 1, SIDE), rows =
			random_between(&random, 1, SIDE);

		garden_rectangle(&garden, '.', columns, rows);
		level_at_random(&random, way, 2 * random_between(&random, 1, 4));
		garden_count(&garden);
		for (int cell = 0; cell < columns * rows; cell++) {
			struct place at = { cell % columns, cell / columns };
			double height = 0;

			for (int k = 0; k < 8; k++)
				for (int j = 0; j < 8; j++)
					height += height_at(way, at.x + (j + 0.5) / 8,
						at.y + (k + 0.5) / 8) / 64;
			*(height > 0 ? &sum.cut : &sum.fill) += fabs(height);
		}
		ck_assert_double_eq_tol(volumes()->finished.cut / CUBIC_FOOT, sum.cut, 1e-6);
		ck_assert_double_eq_tol(volumes()->finished.fill / CUBIC_FOOT, sum.fill, 1e-6);
		garden_fini(&garden);
	}
}
END_TEST

/* Away from the corner of a house ground bends within squares: the most that the nets may be apart
 * is what the header says. Towards a bearing they are not. */
START_TEST(both_methods_have_one_net)
{
	static const char *const ways[] = { "finish 0,0 4 in\nfall 3.7 % towards 291.5\n",
		"finish 0,0 4 in\nfall 12.5 % away\nhouse \"Home\"\n  from 3,-4 to 6,2\n"
		"house \"Shed\"\n  from -3,7 to 1,9\n" };
	struct random random = { 77 + (uint64_t)_i };

	for (int i = 0; i < runner_count(RANDOM_PLOTS, 8 * RANDOM_PLOTS); i++) {
		int halves = random_between(&random, 1, 9);
		double area, most;

		plot_at_random(&garden.plot, &random, SIDE, "bplS.");
		level_at_random(&random, 0, halves);
		garden.plot.details.finish.has_level = false;
		plot_add_lines(&garden.plot, ways[_i]);
		garden_count(&garden);
		area = (double)(garden.plot.ground.columns * garden.plot.ground.rows);
		most = _i == 0 ? 0 : 0.6 * 0.125 * (halves / 2.0 + 1) * area;
		ck_assert_double_le(garden.takeoff.levelling.apart / CUBIC_FOOT, most + 1e-6);
		garden_fini(&garden);
	}
}
END_TEST

/* Left for right, bearings too: the survey ends on the plan's sides. */
static void mirror(void)
{
	struct ground *plan = &garden.plot.ground;
	struct levels *levels = &garden.plot.details.levels;
	struct finish *finish = &garden.plot.details.finish;

	for (int y = 0; y < plan->rows; y++)
		for (int x = 0; x < plan->columns / 2; x++) {
			char *one = ground_at(plan, x, y), was = *one;
			char *other = ground_at(plan, plan->columns - 1 - x, y);

			*one = *other;
			*other = was;
		}
	for (int y = 0; y < levels->rows; y++)
		for (int x = 0; x < levels->columns / 2; x++) {
			nm *one = &levels->drops[y * levels->columns + x], was = *one;
			nm *other = &levels->drops[(y + 1) * levels->columns - 1 - x];

			*one = *other;
			*other = was;
		}
	finish->at.x = plan->columns - finish->at.x;
	finish->bearing = (360 * MILLION - finish->bearing) % (360 * MILLION);
}

static void are_equal(const struct cut_fill *a, const struct cut_fill *b)
{
	ck_assert_double_eq_tol(a->cut, b->cut, 1e-9);
	ck_assert_double_eq_tol(a->fill, b->fill, 1e-9);
}

START_TEST(a_mirror_image_has_the_same_figures)
{
	struct random random = { 5 };

	for (int i = 0; i < runner_count(RANDOM_PLOTS, 8 * RANDOM_PLOTS); i++) {
		struct cut_fills one;
		struct earthwork work;

		/* Walls are left out: of a bed that is no image of itself they may be laid
		 * otherwise, and then their base is. */
		plot_at_random(&garden.plot, &random, SIDE, "plSm.");
		level_at_random(&random, 0, 2);
		plot_add_lines(&garden.plot, "fall 4.3 % towards 118.25\n");
		garden_count(&garden);
		one = *volumes();
		work = garden.takeoff.earthwork;
		mirror();
		garden_count(&garden);
		are_equal(&volumes()->formation, &one.formation);
		are_equal(&volumes()->finished, &one.finished);
		are_equal(&volumes()->by_unit_areas, &one.by_unit_areas);
		ck_assert_double_eq_tol(garden.takeoff.earthwork.spoil, work.spoil, 1e-9);
		ck_assert_double_eq_tol(garden.takeoff.earthwork.stripped, work.stripped, 1e-9);
		garden_fini(&garden);
	}
}
END_TEST

/* All drops are alike, and so is the finished ground. */
START_TEST(level_ground_is_dug_exactly_as_without_levels)
{
	struct random random = { 6 };

	for (int i = 0; i < runner_count(RANDOM_PLOTS, 8 * RANDOM_PLOTS); i++) {
		struct earthwork work, *now = &garden.takeoff.earthwork;
		nm drop = random_below(&random, 500) * NM_PER_MM;

		diggings_plot(&garden.plot, &random);
		garden_count(&garden);
		work = *now;
		level_at_random(&random, 0, 2 * random_between(&random, 1, 5));
		for (int k = 0; k < garden.plot.details.levels.columns *
			garden.plot.details.levels.rows; k++)
			garden.plot.details.levels.drops[k] = drop;
		garden.plot.details.finish.drop = drop;
		garden_count(&garden);
		ck_assert_int_eq(now->count, work.count);
		ck_assert_mem_eq(&now->bank, &work.bank, sizeof work.bank);
		ck_assert_mem_eq(&now->loose, &work.loose, sizeof work.loose);
		ck_assert(now->spoil == work.spoil && now->stripped == work.stripped);
		ck_assert(now->fill == 0 && now->deepest == work.deepest);
		ck_assert_double_eq_tol(volumes()->formation.cut, work.bank_all, 1e-9);
		ck_assert(volumes()->finished.cut == 0 && volumes()->finished.fill == 0);
		garden_fini(&garden);
	}
}
END_TEST

/* ---- Low ground ------------------------------------------------------------------------------ */

/* 4 x 4 ft of a path 6 in deep beside as much that is open and too low. Of the 8 cu ft that are
 * dug, 2 in of them sod, 5 1/3 cu ft may be filled in: tamped they are 9/10. */
static void low_beside_a_path(const char *low)
{
	garden_rows(&garden, (const char *const[]){ "pppp....", "pppp....", "pppp....",
		"pppp....", NULL });
	plot_add_lines(&garden.plot, low);
	garden_count(&garden);
}

START_TEST(spoil_fills_low_ground_before_it_is_hauled)
{
	const struct earthwork *work = &garden.takeoff.earthwork;

	/* 0 in under the path, then 3 in low over 8 in of slope: parts of 4 ft by 4 in each */
	low_beside_a_path("levels 4 ft\n  0 in, 0 in, 6 in\n  0 in, 0 in, 6 in\n"
		"finish 0,0 0 in\n");
	ck_assert_double_eq_tol(work->fill / CUBIC_FOOT, 16 * 3 / 12.0, EXACT);
	ck_assert_double_eq_tol(work->fill_short, 0, EXACT);
	/* 4 cu ft tamped are 4 / 0.9 in the bank, loose a quarter more */
	ck_assert_double_eq_tol(work->fill_loose / CUBIC_FOOT, 4 / 0.9 * 1.25, EXACT);
	ck_assert_double_eq_tol(work->spoil / CUBIC_FOOT, (8 - 4 / 0.9) * 1.25, EXACT);
	ck_assert_ptr_null(garden_item(&garden, "fill"));
	ck_assert_int_eq(work->fill_count, 1);
	ck_assert_int_eq(work->fills[0].part, DIG_GRADED);
}
END_TEST

START_TEST(what_low_ground_lacks_is_bought)
{
	const struct earthwork *work = &garden.takeoff.earthwork;
	const struct item *item;
	double lacking = 16 * 9 / 12.0 - (8 - 8.0 / 3) * 0.9;

	low_beside_a_path("levels 4 ft\n  0 in, 0 in, 18 in\n  0 in, 0 in, 18 in\n"
		"finish 0,0 0 in\n");
	ck_assert_double_eq_tol(work->fill / CUBIC_FOOT, 12, EXACT);
	ck_assert_double_eq_tol(work->fill_short / CUBIC_FOOT, lacking, EXACT);
	/* Sod is hauled all the same. */
	ck_assert_double_eq_tol(work->spoil / CUBIC_FOOT, 8 / 3.0 * 1.25, EXACT);
	item = garden_item(&garden, "fill");
	ck_assert_ptr_nonnull(item);
	ck_assert_double_eq_tol(item->laid / CUBIC_FOOT, lacking / 0.9 * 1.25, EXACT);
}
END_TEST

/* More is wanted than there is, and no sod is dug: all that does not go back over the bases is
 * filled in, and nothing is hauled. */
START_TEST(what_goes_back_over_bases_does_not_fill_low_ground)
{
	const struct earthwork *work = &garden.takeoff.earthwork;

	garden_rows(&garden, (const char *const[]){ "................", "................",
		".bbbbbbbb.......", ".bbbbbbbb.......", ".bbbbbbbb.......", ".bbbbbbbb.......",
		"................", "................", NULL });
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "0 in");
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1");
	plot_add_lines(&garden.plot, "levels 4 ft\n  0 in, 0 in, 0 in, 0 in, 18 in\n"
		"  0 in, 0 in, 0 in, 0 in, 18 in\n  0 in, 0 in, 0 in, 0 in, 18 in\n"
		"finish 0,0 0 in\n");
	garden_count(&garden);
	ck_assert_double_gt(work->backfill, 0);
	ck_assert_double_gt(work->fill_short, 0);
	ck_assert_double_eq_tol(work->spoil, 0, EXACT);
	ck_assert_double_eq_tol(work->fill_loose + work->backfill_loose, work->loose_all, EXACT);
	/* tamped, both of them, to 9/10 of the bank */
	ck_assert_double_eq_tol(work->fill - work->fill_short + work->backfill,
		0.9 * work->bank_all, EXACT);
}
END_TEST

START_TEST(beds_and_lawns_take_topsoil_before_low_ground_does)
{
	const struct earthwork *work = &garden.takeoff.earthwork;

	garden_rows(&garden, (const char *const[]){ "llll....", "llll....", "llll....",
		"llll....", NULL });
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "1 ft");
	plot_add_lines(&garden.plot,
		"levels 4 ft\n  0 in, 0 in, 6 in\n  0 in, 0 in, 6 in\nfinish 0,0 0 in\n");
	garden_count(&garden);
	/* The lawn is dug 4 3/4 in deep, 2 3/4 in of it topsoil, and wants more than that back. */
	ck_assert_double_eq_tol(work->reused / CUBIC_FOOT, 16 * 2.75 / 12 * 1.25, EXACT);
	ck_assert_double_eq_tol(work->fill_loose, 0, EXACT);
	ck_assert_double_eq_tol(work->fill_short / CUBIC_FOOT, 4, EXACT);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cut and fill");
	TCase *published = suite_case(suite, "published"), *hand = suite_case(suite, "hand");
	TCase *any = suite_case(suite, "any"), *low = suite_case(suite, "low");

	tcase_add_checked_fixture(published, NULL, teardown);
	tcase_add_test(published, a_published_cell_of_50_ft_is_563_cu_ft);
	tcase_add_test(published, a_published_cut_below_pavement_is_3313_cu_ft);
	tcase_add_test(published, a_published_line_of_no_cut_is_15_ft_from_the_corner);
	tcase_add_test(published, the_middle_of_four_unit_areas_counts_four_times);
	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_test(hand, each_cell_is_cut_or_filled_by_its_middle);
	tcase_add_test(hand, the_dig_of_a_zone_is_from_the_ground_to_its_formation);
	tcase_add_test(hand, open_ground_is_graded_where_a_finish_is_told_and_else_is_left);
	tcase_add_test(hand, under_walls_the_dig_is_level);
	tcase_add_test(hand, sod_within_walls_is_kept_where_ground_is_graded);
	tcase_add_test(hand, a_wall_on_a_plane_is_dug_down_to_its_level_formation);
	tcase_add_test(hand, what_goes_back_over_its_base_goes_by_the_level_too);
	tcase_add_test(hand, the_survey_beyond_the_plan_is_not_counted);
	tcase_add_test(hand, a_line_of_the_survey_parts_a_cell);
	tcase_add_test(hand, low_ground_is_as_deep_as_its_deepest_part);
	tcase_add_test(hand, low_ground_within_undug_walls_is_filled);
	tcase_add_test(hand, the_deepest_cut_may_be_within_undug_walls);
	tcase_add_checked_fixture(any, NULL, teardown);
	tcase_add_loop_test(any, any_ground_is_cut_and_filled_as_much_as_a_lattice_of_points_says,
		0, 3);
	tcase_add_test(any, open_ground_is_cut_and_filled_cell_by_cell_as_points_say);
	tcase_add_loop_test(any, both_methods_have_one_net, 0, 2);
	tcase_add_test(any, a_mirror_image_has_the_same_figures);
	tcase_add_test(any, level_ground_is_dug_exactly_as_without_levels);
	tcase_add_checked_fixture(low, NULL, teardown);
	tcase_add_test(low, spoil_fills_low_ground_before_it_is_hauled);
	tcase_add_test(low, what_low_ground_lacks_is_bought);
	tcase_add_test(low, what_goes_back_over_bases_does_not_fill_low_ground);
	tcase_add_test(low, beds_and_lawns_take_topsoil_before_low_ground_does);
	return suite;
}
