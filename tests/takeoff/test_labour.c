/* How much there is to do of each kind of work and how long it takes, by hand. */
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <string.h>

#define FOOT 0.3048
static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct labour *labour(enum attribute kind)
{
	const struct labours *labours = &garden.takeoff.work.labours;

	for (int i = 0; i < labours->count; i++)
		if (labours->list[i].kind == kind)
			return &labours->list[i];
	return NULL;
}

static const struct labour *need(enum attribute kind)
{
	const struct labour *found = labour(kind);

	if (!found)
		ck_abort_msg("nothing to %s", attribute_row(kind)->keyword);
	return found;
}

static void rate(enum attribute kind, const char *words)
{
	struct scan s = scan_start(words, strlen(words), 1);
	struct value value;
	struct diag d;

	ck_assert(value_scan(&s, &attribute_row(kind)->rule, UNITS_IMPERIAL, &value, &d));
	block_set(&garden.plot.details.rates, kind, value);
}

/* What is expected: a quantity in pieces, m, m2 or m3; hours, 0 where no rate is known. */
struct expected {
	enum attribute kind;
	double quantity, hours;
};

static void check(const struct expected *rows, int count)
{
	const struct labours *labours = &garden.takeoff.work.labours;

	ck_assert_int_eq(labours->count, count);
	for (int i = 0; i < count; i++) {
		const struct labour *found = &labours->list[i];

		ck_assert_str_eq(attribute_row(found->kind)->keyword,
			attribute_row(rows[i].kind)->keyword);
		ck_assert_double_eq_tol(found->quantity, rows[i].quantity, 1e-9);
		ck_assert_double_eq_tol(found->hours, rows[i].hours, 1e-9);
		ck_assert_int_eq(found->source, rows[i].hours > 0 ? RATE_USUAL : RATE_UNKNOWN);
	}
}
#define CHECK(...) check((const struct expected[]){ __VA_ARGS__ }, \
	(int)(sizeof((struct expected[]){ __VA_ARGS__ }) / sizeof(struct expected)))

/* ---- By hand, each thing alone --------------------------------------------------------------- */

/* 10 x 10 ft: 2 in of sod on 4 in of loam, a base of 4 in, 2 in of surface. Sod and loam swell by a
 * quarter; stone is 1.2 times its volume loose. Edging goes round on four sides. */
START_TEST(a_path_is_stripped_dug_tamped_based_edged_and_surfaced)
{
	const double sod = 100 * 2 / 12.0 * CUBIC_FOOT, loam = 100 * 4 / 12.0 * CUBIC_FOOT;

	garden_rectangle(&garden, 'p', 10, 10);
	garden_count(&garden);
	CHECK({ RATE_STRIP, 100 * SQUARE_FOOT, 2.2 * sod }, { RATE_DIG, loam, 2.2 * loam },
		{ RATE_LOAD, 1.25 * (sod + loam), 1.3 * 1.25 * (sod + loam) },
		{ RATE_TAMP, 100 * SQUARE_FOOT, 0 }, { RATE_FABRIC, 100 * SQUARE_FOOT, 0 },
		{ RATE_BASE, loam, 1.0 * loam }, { RATE_EDGING, 40 * FOOT, 0 },
		{ RATE_SURFACE, 100 * SQUARE_FOOT, 1.25 * 1.2 * sod });
}
END_TEST

static void drop_at(int x, int y)
{
	garden.plot.details.around.has_drop = true;
	garden.plot.details.around.drop = (struct place){ x, y };
}

/* The path's middle is 2 1/2 ft across and 5 ft down from the drop on the average: 7 1/2 ft. Spoil
 * of 62.5 cu ft at 2,400 lb a cu yd is 19 loads of 300 lb, base stone of 42 cu ft at 2,700 lb a cu
 * yd is 14. Pushed at 200 ft a minute (from memory: J. C. Trautwine, The Civil Engineer's
 * Pocket-Book, on wheelbarrows; edition and page not noted). What is spread has 50 m in its
 * rate. */
START_TEST(from_the_drop_loads_go_there_and_back)
{
	const double sod = 100 * 2 / 12.0 * CUBIC_FOOT, loam = 100 * 4 / 12.0 * CUBIC_FOOT;
	const double there_and_back = 2 * 7.5 * FOOT, minute = 200 * FOOT;

	garden_rectangle(&garden, 'p', 10, 10);
	drop_at(5, 10);
	garden_count(&garden);
	CHECK({ RATE_STRIP, 100 * SQUARE_FOOT, 2.2 * sod }, { RATE_DIG, loam, 2.2 * loam },
		{ RATE_LOAD, 1.25 * (sod + loam), 1.3 * 1.25 * (sod + loam) },
		{ RATE_BARROW, 19 * there_and_back, 19 * there_and_back / minute / 60 },
		{ RATE_TAMP, 100 * SQUARE_FOOT, 0 }, { RATE_FABRIC, 100 * SQUARE_FOOT, 0 },
		{ RATE_BASE, loam, 1.0 * loam },
		{ RATE_BARROW, 14 * there_and_back, 14 * there_and_back / minute / 60 },
		{ RATE_EDGING, 40 * FOOT, 0 },
		{ RATE_SURFACE, 100 * SQUARE_FOOT, 1.25 * 1.2 * sod });
}
END_TEST

static double pushed_for(enum work_step step)
{
	const struct labours *labours = &garden.takeoff.work.labours;

	for (int i = 0; i < labours->count; i++)
		if (labours->list[i].kind == RATE_BARROW && labours->list[i].step == step)
			return labours->list[i].quantity;
	return 0;
}

/* Cells of 10 ft, 1 to 40 of them from the drop: 205 ft on the average, 62.484 m. The surface, 2 in
 * on 4,000 sq ft, with what tamping takes and 5 % to spare 840 cu ft of 100 lb, is 280 loads. */
START_TEST(of_what_is_spread_the_way_beyond_50_m_counts)
{
	garden_rectangle(&garden, 'p', 40, 1);
	plot_set(&garden.plot, 0, HEAD_CELL, "10 ft");
	drop_at(0, 0);
	garden_count(&garden);
	ck_assert_double_eq_tol(pushed_for(WORK_SURFACE), 280 * 2 * (62.484 - 50), 1e-6);
	ck_assert_double_eq_tol(pushed_for(WORK_BASE), 560 * 2 * 62.484, 1e-6);
}
END_TEST

START_TEST(a_rate_of_ones_own_for_a_barrow_goes_before_the_usual_one)
{
	garden_rectangle(&garden, 'p', 10, 10);
	drop_at(5, 10);
	rate(RATE_BARROW, "0.001 h per m");
	garden_count(&garden);
	ck_assert_double_eq_tol(need(RATE_BARROW)->hours, 19 * 2 * 7.5 * FOOT / 1000, 1e-9);
	ck_assert_int_eq(need(RATE_BARROW)->source, RATE_OF_PLOT);
}
END_TEST

/* A bed with its path, each with a way of its own: what both take goes as far as its parts do. */
START_TEST(a_step_goes_as_far_as_what_it_takes_does)
{
	const struct barrow_ways *ways = &garden.takeoff.barrow_ways;
	double dug[2] = { 0, 0 };
	struct barrow_run run;

	garden_rows(&garden, (const char *const[]){ "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb",
		"pppppppp", "pppppppp", NULL });
	drop_at(0, 6);
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.earthwork.count; i++)
		dug[garden.takeoff.earthwork.rows[i].region] +=
			earth_sum(&garden.takeoff.earthwork.rows[i].bank);
	run = barrow_run_of(&garden.takeoff, WORK_HAUL);
	ck_assert_int_gt(ways->regions[0], ways->regions[1]);
	ck_assert_double_eq_tol((double)run.way, (dug[0] * (double)ways->regions[0] +
		dug[1] * (double)ways->regions[1]) / (dug[0] + dug[1]), 1);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_FILL).way, ways->regions[0]);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_MULCH).way, ways->regions[0]);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_SURFACE).way, ways->regions[1]);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_WALLS).loads, 0);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_WALLS).way, 0);
}
END_TEST

START_TEST(mulch_goes_to_mulched_beds_soil_to_lawns_and_concrete_to_fences)
{
	const struct barrow_ways *ways = &garden.takeoff.barrow_ways;

	garden_rows(&garden, (const char *const[]){ "bbbbccccllll", "bbbbccccllll", "bbbbccccllll",
		"bbbbccccllll", "pppppppppppp", NULL });
	plot_set(&garden.plot, 'c', BED_MULCH, "0 in");
	fences_run(&garden.plot, "0,0 0,5 12,5");
	drop_at(12, 5);
	garden_count(&garden);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_MULCH).way, ways->regions[0]);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_LAWN).way, ways->regions[2]);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_POSTS).way, ways->fences);
	ck_assert(ways->regions[0] > ways->regions[1] && ways->regions[1] > ways->regions[2]);
}
END_TEST

/* Two yards, the second shut. */
START_TEST(what_no_barrow_gets_to_is_in_no_average)
{
	garden_rows(&garden, (const char *const[]){ "ppp...", "......", "ccccc.", "cpppc.",
		"ccccc.", NULL });
	drop_at(0, 0);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.barrow_ways.regions[2], 0);
	ck_assert_int_gt(garden.takeoff.barrow_ways.regions[0], 0);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_SURFACE).way,
		garden.takeoff.barrow_ways.regions[0]);
}
END_TEST

START_TEST(what_no_barrow_gets_to_is_in_no_way)
{
	garden_rectangle(&garden, 'b', 8, 4);
	drop_at(4, 2);
	garden_count(&garden);
	ck_assert_int_gt(barrow_run_of(&garden.takeoff, WORK_FILL).loads, 0);
	ck_assert_int_eq(barrow_run_of(&garden.takeoff, WORK_FILL).way, 0);
	ck_assert_ptr_null(labour(RATE_BARROW));
}
END_TEST

/* The same, seen by the ground: hours a cubic metre. Common practice, no published source (labour
 * factors of the trade in New Zealand, by whom and when not noted). */
static const struct { const char *subsoil; double swell, digging, loading; } grounds[] = {
	{ "sand", 1.12, 1.20, 1.00 }, { "loam", 1.25, 2.20, 1.30 }, { "clay", 1.40, 3.30, 1.90 },
};

START_TEST(digging_and_loading_take_as_long_as_the_ground_is_heavy)
{
	double sod = 100 * 2 / 12.0 * CUBIC_FOOT, below = 100 * 4 / 12.0 * CUBIC_FOOT;

	garden_rectangle(&garden, 'p', 10, 10);
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, grounds[_i].subsoil);
	plot_set(&garden.plot, 'p', PATH_BASE, "4 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(need(RATE_STRIP)->hours, grounds[_i].digging * sod, 1e-9);
	ck_assert_double_eq_tol(need(RATE_DIG)->hours, grounds[_i].digging * below, 1e-9);
	ck_assert_double_eq_tol(need(RATE_LOAD)->hours,
		grounds[_i].loading * (1.25 * sod + grounds[_i].swell * below), 1e-9);
}
END_TEST

/* 8 x 4 ft of blocks 16 x 8 x 6 in: 16 a course, 48 in three, none of them cut. Within is a length
 * of 80 and a width of 32 in: a liner of 224 in, and 17.78 sq ft under 2 in of mulch. */
START_TEST(a_raised_bed_takes_its_blocks_liner_fill_and_mulch)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_double_eq(need(RATE_BLOCK)->quantity, 48);
	ck_assert_ptr_null(labour(RATE_CUT));
	ck_assert_ptr_null(labour(RATE_CAP));
	ck_assert_double_eq_tol(need(RATE_LINER)->quantity, 224 / 12.0 * FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_MULCH)->quantity, 80 * 32 / 144.0 * 2 / 12 * CUBIC_FOOT,
		1e-9);
	ck_assert_double_eq_tol(need(RATE_MULCH)->hours, 1.25 * need(RATE_MULCH)->quantity, 1e-9);
	ck_assert_double_eq_tol(need(RATE_FILL)->quantity, garden.takeoff.fills.list[0].order,
		1e-9);
	ck_assert_double_eq_tol(need(RATE_FILL)->hours, 1.25 * need(RATE_FILL)->quantity, 1e-9);
	ck_assert_double_eq_tol(need(RATE_LOOSEN)->quantity, garden.takeoff.earthwork.loosened,
		1e-9);
}
END_TEST

/* The plan is all bed, 8 x 4 ft. Its base reaches 2 in inside: 76 x 28 in are not dug, their sod is
 * taken off like the rest and goes back. */
START_TEST(sod_is_taken_off_all_of_a_bed_and_dug_with_none_of_it)
{
	double dug = (32 - 76 * 28 / 144.0) * SQUARE_FOOT;

	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_double_eq_tol(need(RATE_STRIP)->quantity, 32 * SQUARE_FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_STRIP)->hours, 2.2 * 32 * 2 / 12.0 * CUBIC_FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_DIG)->quantity,
		garden.takeoff.earthwork.bank_all - dug * 2 / 12 * FOOT, 1e-9);
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	garden_count(&garden);
	ck_assert_ptr_null(labour(RATE_STRIP));
}
END_TEST

/* Whole and cut ones are laid, the cut ones sawn, and a cap is a course more. */
START_TEST(pieces_are_laid_as_blocks_are_and_sawn_besides)
{
	int64_t cut = 0, laid;

	garden_rectangle(&garden, 'b', 9, 5);
	plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 8 in x 6 in");
	plot_set(&garden.plot, 'b', BED_CAP, "16 in x 8 in x 2 in");
	garden_count(&garden);
	const struct wall *wall = &garden.takeoff.walls.list[0];

	laid = wall->whole_blocks + wall->cut_pieces;
	for (int i = 0; i < garden.takeoff.cuttings.count; i++)
		for (int j = 0; j < garden.takeoff.cuttings.list[i].cut_count; j++) {
			const struct cut *way = &garden.takeoff.cuttings.list[i].cuts[j];

			cut += way->blocks * way->piece_count;
		}
	ck_assert_int_gt(wall->cut_pieces, 0);
	ck_assert_double_eq(need(RATE_BLOCK)->quantity, (double)laid);
	ck_assert_double_eq(need(RATE_CAP)->quantity, (double)(wall->cap.whole + wall->cap.cut));
	ck_assert_double_eq(need(RATE_CUT)->quantity, (double)cut);
	ck_assert_int_eq(cut, wall->cut_pieces + wall->cap.cut);
}
END_TEST

/* 10 x 10 ft dug over 8 in deep, and 2 in of what is not topsoil dug in: all compost here. */
START_TEST(a_bed_at_ground_level_is_dug_over_by_its_depth)
{
	const double dug = 100 * 8 / 12.0 * CUBIC_FOOT, compost = 100 * 2 / 12.0 * CUBIC_FOOT;

	garden_rectangle(&garden, 'b', 10, 10);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_MULCH, "0 in");
	garden_count(&garden);
	CHECK({ RATE_PREPARE, 100 * SQUARE_FOOT, 2.2 * dug },
		{ RATE_FILL, compost, 1.25 * compost }, { RATE_EDGING, 40 * FOOT, 0 });
	ck_assert_int_eq(need(RATE_PREPARE)->step, WORK_BACKFILL);
}
END_TEST

START_TEST(a_bed_that_is_replaced_is_dug_out_and_not_dug_over)
{
	garden_rectangle(&garden, 'b', 10, 10);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	garden_count(&garden);
	ck_assert_ptr_null(labour(RATE_PREPARE));
	ck_assert_double_eq_tol(need(RATE_DIG)->quantity, 100 * 6 / 12.0 * CUBIC_FOOT, 1e-9);
}
END_TEST

START_TEST(turf_is_laid_and_seed_sown_by_area_on_topsoil_by_volume)
{
	garden_rows(&garden, (const char *const[]){ "llllmm", "llllmm", NULL });
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	garden_count(&garden);
	/* 12 sq ft, 4 in deep, and 15 % more for what settles. */
	double topsoil = 12 * 4 / 12.0 * 1.15 * CUBIC_FOOT;

	ck_assert_double_eq_tol(need(RATE_TURF)->quantity, 8 * SQUARE_FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_SEED)->quantity, 4 * SQUARE_FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_TOPSOIL)->quantity, topsoil, 1e-9);
	ck_assert_double_eq_tol(need(RATE_TOPSOIL)->hours, 1.25 * topsoil, 1e-9);
}
END_TEST

/* 24 ft in sections of 8 ft: 3 panels and 4 posts, a hole of 30 in under each, three posts of 3 1/2
 * in across; nothing is stripped for holes. */
START_TEST(a_fence_has_its_posts_and_panels_and_its_holes_are_dug)
{
	const double hole = 3.14159265358979323846 / 4 * pow(10.5 / 12 * FOOT, 2) * 30 / 12 * FOOT;

	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 26,5");
	garden_count(&garden);
	CHECK({ RATE_HOLE, 4, 0 }, { RATE_POST, 4, 0 },
		{ RATE_LOAD, 4 * 1.25 * hole, 1.3 * 4 * 1.25 * hole }, { RATE_PANEL, 3, 0 });
}
END_TEST

START_TEST(a_gate_is_hung_beside_the_panels)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 22,5");
	fences_gate(&garden.plot, "10,5 14,5");
	garden_count(&garden);
	ck_assert_double_eq(need(RATE_PANEL)->quantity, 2);
	ck_assert_double_eq(need(RATE_GATE)->quantity, 1);
}
END_TEST

/* ---- Rates ----------------------------------------------------------------------------------- */

START_TEST(the_plots_rate_goes_before_the_books_and_that_before_the_usual_one)
{
	garden_rectangle(&garden, 'p', 10, 10);
	garden_count(&garden);
	ck_assert_int_eq(need(RATE_BASE)->source, RATE_USUAL);
	book_of(&garden.book, "'rates': {'base': '0.5 h per m3', 'tamp': '0.03 h per sq-ft'}");
	garden.has_book = true;
	garden_count(&garden);
	ck_assert_int_eq(need(RATE_BASE)->source, RATE_OF_BOOK);
	ck_assert_double_eq_tol(need(RATE_BASE)->hours, 0.5 * 100 / 3 * CUBIC_FOOT, 1e-9);
	ck_assert_double_eq_tol(need(RATE_TAMP)->hours, 3, 1e-9);
	rate(RATE_BASE, "0.1 h per cu-ft");
	garden_count(&garden);
	ck_assert_int_eq(need(RATE_BASE)->source, RATE_OF_PLOT);
	ck_assert_double_eq_tol(need(RATE_BASE)->hours, 0.1 * 100 / 3, 1e-9);
	ck_assert_int_eq(need(RATE_TAMP)->source, RATE_OF_BOOK);
	ck_assert_int_eq(need(RATE_DIG)->source, RATE_USUAL);
}
END_TEST

/* US Navy, Naval Education and Training, NAVEDTRA 14045, title and year not noted: 160 hours for
 * 1,000 sq ft of wall of 8 x 8 x 16 in block laid in mortar, 72 hours for 448 sq ft. Here such a
 * rate is given for as much ground. */
START_TEST(a_published_rate_of_160_hours_a_1000_sq_ft_gives_72_for_448)
{
	garden_rectangle(&garden, 'p', 28, 16);
	rate(RATE_SURFACE, "0.16 h per sq-ft");
	garden_count(&garden);
	ck_assert_double_eq(round(need(RATE_SURFACE)->hours), 72);
	ck_assert_double_eq_tol(need(RATE_SURFACE)->hours, 71.68, 1e-9);
}
END_TEST

static const struct { enum attribute kind; const char *imperial, *metric; } alike[] = {
	{ RATE_EDGING, "0.3048 h per ft", "1 h per m" },
	{ RATE_TAMP, "0.092903 h per sq-ft", "1 h per m2" },
	{ RATE_DIG, "0.028317 h per cu-ft", "1 h per m3" },
};

/* A foot is 0.3048 m, by the international agreement of 1959; to six places. */
START_TEST(a_rate_is_the_same_in_feet_and_in_metres)
{
	double hours;

	garden_rectangle(&garden, 'p', 10, 10);
	rate(alike[_i].kind, alike[_i].metric);
	garden_count(&garden);
	hours = need(alike[_i].kind)->hours;
	ck_assert_double_eq_tol(hours, need(alike[_i].kind)->quantity, 1e-9);
	rate(alike[_i].kind, alike[_i].imperial);
	garden_count(&garden);
	ck_assert_double_eq_tol(need(alike[_i].kind)->hours, hours, 1e-5 * hours);
}
END_TEST

/* 100 sq ft at 0.03 and 40 ft at 0.1: 7 hours; two people at 5 hours a day take 0.7 days. Of a path
 * without fabric, whose usual rates are put out of the way, no other work is left unrated. */
START_TEST(hours_add_up_and_are_shared_by_the_crew)
{
	const struct work_sum *sum = &garden.takeoff.work.sum;

	garden_rectangle(&garden, 'p', 10, 10);
	plot_set(&garden.plot, 0, ALLOW_CREW, "2");
	plot_set(&garden.plot, 0, ALLOW_DAY, "5");
	for (enum attribute a = RATE_STRIP; a <= RATE_SURFACE; a++) {
		enum quantity by = attribute_row(a)->rule.quantity;

		rate(a, by == QUANTITY_HOURS_EACH ? "1 h per each" :
			by == QUANTITY_HOURS_LENGTH ? "0.1 h per ft" :
			by == QUANTITY_HOURS_AREA ? "0.03 h per sq-ft" : "0.000001 h per m3");
	}
	plot_set(&garden.plot, 'p', PATH_FABRIC, "no");
	garden_count(&garden);
	/* strip, tamp, surface: 3 hours each; edging 4 */
	ck_assert_double_eq_tol(sum->hours, 13, 1e-4);
	ck_assert_int_eq(sum->unrated, 0);
	ck_assert_int_eq(sum->crew, 2);
	ck_assert_double_eq(sum->day, 5);
	ck_assert_double_eq_tol(sum->days, 1.3, 1e-5);
}
END_TEST

START_TEST(what_no_rate_is_known_for_is_counted_apart)
{
	garden_rectangle(&garden, 'p', 10, 10);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.work.sum.unrated, 3); /* tamp, fabric, edging */
	ck_assert_double_eq(need(RATE_TAMP)->hours, 0);
	ck_assert_int_eq(need(RATE_TAMP)->source, RATE_UNKNOWN);
}
END_TEST

/* All there is to do in a garden: no hours of what has no usual rate, some of all else. */
START_TEST(what_no_rate_is_known_for_takes_no_hours)
{
	const struct labours *labours = &garden.takeoff.work.labours;
	struct text unknown = TEXT_EMPTY;
	double hours = 0;

	garden_rows(&garden, (const char *const[]){ "bbbbbbbpppllll", "bbSbbbbpppllll",
		"bbbbbbbpppmmmm", "bbbbbbbppTmmmm", "ccccccccc.....", "ccccccccc.....",
		"ccccccccc.....", "ccccccccc.....", "ccccccccc.....", NULL });
	plot_set(&garden.plot, 'c', BED_CAP, "16 in x 8 in x 2 in");
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  spacing 1 ft\n  at 5,2\n");
	fences_run(&garden.plot, "0,9 14,9");
	fences_gate(&garden.plot, "7,9 10,9");
	garden_count(&garden);
	for (int i = 0; i < labours->count; i++) {
		const struct labour *row = &labours->list[i];

		hours += row->hours;
		ck_assert_int_eq(row->source, row->hours > 0 ? RATE_USUAL : RATE_UNKNOWN);
		if (row->source == RATE_UNKNOWN) {
			ck_assert_double_eq(row->hours, 0);
			text_print(&unknown, "%s ", attribute_row(row->kind)->keyword);
		}
	}
	ck_assert_str_eq(unknown.bytes, "hole post tamp fabric fixture block cap cut loosen liner "
		"fixture edging panel gate plant turf seed ");
	ck_assert_double_eq_tol(garden.takeoff.work.sum.hours, hours, 1e-9);
	text_fini(&unknown);
}
END_TEST

START_TEST(each_source_has_its_word_but_none)
{
	ck_assert_ptr_null(rate_source_word(RATE_UNKNOWN));
	ck_assert_str_eq(rate_source_word(RATE_OF_PLOT), "plot");
	ck_assert_str_eq(rate_source_word(RATE_OF_BOOK), "book");
	ck_assert_str_eq(rate_source_word(RATE_USUAL), "usual");
}
END_TEST

/* A path dug 6 in deep out of 16 sq ft beside as much open ground, half of which is 3 in low on
 * average: 4 cu ft are tamped back, at 1 h per m3, and no sod is stripped there. */
START_TEST(low_ground_is_filled_when_the_ground_is_tamped)
{
	const struct labour *filling;

	garden_rows(&garden, (const char *const[]){ "pppp....", "pppp....", "pppp....",
		"pppp....", NULL });
	plot_add_lines(&garden.plot,
		"levels 4 ft\n  0 in, 0 in, 6 in\n  0 in, 0 in, 6 in\nfinish 0,0 0 in\n");
	garden_count(&garden);
	filling = need(RATE_BACKFILL);
	ck_assert_int_eq(filling->step, WORK_TAMP);
	ck_assert_double_eq_tol(filling->quantity / CUBIC_FOOT, 4, 1e-9);
	ck_assert_double_eq_tol(filling->hours, filling->quantity, 1e-12);
	ck_assert_double_eq_tol(need(RATE_STRIP)->quantity / SQUARE_FOOT, 16, 1e-9);
	ck_assert(garden.takeoff.work.facts & FACT(LOW));
	ck_assert(garden.takeoff.work.facts & FACT(LEVELS));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("labour");
	TCase *quantities = suite_case(suite, "quantities"), *rates = suite_case(suite, "rates");

	tcase_add_checked_fixture(quantities, NULL, teardown);
	tcase_add_checked_fixture(rates, NULL, teardown);
	tcase_add_test(quantities, low_ground_is_filled_when_the_ground_is_tamped);
	tcase_add_test(quantities, a_path_is_stripped_dug_tamped_based_edged_and_surfaced);
	tcase_add_test(quantities, from_the_drop_loads_go_there_and_back);
	tcase_add_test(quantities, of_what_is_spread_the_way_beyond_50_m_counts);
	tcase_add_test(quantities, a_rate_of_ones_own_for_a_barrow_goes_before_the_usual_one);
	tcase_add_test(quantities, a_step_goes_as_far_as_what_it_takes_does);
	tcase_add_test(quantities, mulch_goes_to_mulched_beds_soil_to_lawns_and_concrete_to_fences);
	tcase_add_test(quantities, what_no_barrow_gets_to_is_in_no_average);
	tcase_add_test(quantities, what_no_barrow_gets_to_is_in_no_way);
	tcase_add_loop_test(quantities, digging_and_loading_take_as_long_as_the_ground_is_heavy, 0,
		sizeof grounds / sizeof *grounds);
	tcase_add_test(quantities, a_raised_bed_takes_its_blocks_liner_fill_and_mulch);
	tcase_add_test(quantities, sod_is_taken_off_all_of_a_bed_and_dug_with_none_of_it);
	tcase_add_test(quantities, pieces_are_laid_as_blocks_are_and_sawn_besides);
	tcase_add_test(quantities, a_bed_at_ground_level_is_dug_over_by_its_depth);
	tcase_add_test(quantities, a_bed_that_is_replaced_is_dug_out_and_not_dug_over);
	tcase_add_test(quantities, turf_is_laid_and_seed_sown_by_area_on_topsoil_by_volume);
	tcase_add_test(quantities, a_fence_has_its_posts_and_panels_and_its_holes_are_dug);
	tcase_add_test(quantities, a_gate_is_hung_beside_the_panels);
	tcase_add_test(rates, the_plots_rate_goes_before_the_books_and_that_before_the_usual_one);
	tcase_add_test(rates, a_published_rate_of_160_hours_a_1000_sq_ft_gives_72_for_448);
	tcase_add_loop_test(rates, a_rate_is_the_same_in_feet_and_in_metres, 0,
		sizeof alike / sizeof *alike);
	tcase_add_test(rates, hours_add_up_and_are_shared_by_the_crew);
	tcase_add_test(rates, what_no_rate_is_known_for_is_counted_apart);
	tcase_add_test(rates, what_no_rate_is_known_for_takes_no_hours);
	tcase_add_test(rates, each_source_has_its_word_but_none);
	return suite;
}
