/* The set-out, held to outlines, posts and the grid as they are. */
#include "takeoff/setout/setout.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "base/number.h"
#include "survey/cover.h"
#include "survey/outline.h"
#include "takeoff/common/basis.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ROWS (const char *const[])
#define FOOT NM_PER_FOOT
#define INCH NM_PER_INCH

enum { TRIES = 60, MOST = 30 };

static struct garden garden;
static struct arena arena;
static struct setout setout;

static void teardown(void)
{
	arena_clear(&arena);
	garden_fini(&garden);
}

static void set_out(void)
{
	garden_set_out(&garden, &setout, &arena);
}

static void given(const char *const *rows)
{
	garden_rows(&garden, rows);
	set_out();
}

static void at_random(int seed)
{
	static const char *const cells[] = { "1 ft", "7 in", "3 ft", "400 mm" };
	struct random random = { (uint64_t)seed };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, MOST, "bcdpl.FG");
	plot_set(&garden.plot, 0, HEAD_UNITS, seed % 4 == 3 ? "metric" : "imperial");
	plot_set(&garden.plot, 0, HEAD_CELL, cells[seed % 4]);
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	for (int i = 0; i < seed % 3; i++)
		fences_at_random(&garden.plot, &random);
	set_out();
}

static const struct setout_string *string_at(bool is_upright, nm at)
{
	for (int i = 0; i < setout.string_count; i++)
		if (setout.strings[i].is_upright == is_upright && setout.strings[i].at == at)
			return &setout.strings[i];
	return NULL;
}

static bool is_guided(const struct setout_string *string, bool is_fence, int index)
{
	int named = string->guide_count < SETOUT_NAMED_MOST ? string->guide_count :
		SETOUT_NAMED_MOST;

	for (int i = 0; i < named; i++)
		if (string->guides[i].is_fence == is_fence && string->guides[i].index == index)
			return true;
	return string->guide_count > SETOUT_NAMED_MOST;
}

/* ---- Corners --------------------------------------------------------------------------------- */

/* A corner of a region's outline; or one that a walk came to. */
struct turn_at {
	nm x, y;
	int region;
};

struct turns {
	struct turn_at *list;
	size_t count, capacity;
};

static int compare_turns(const void *one, const void *other)
{
	return memcmp(one, other, sizeof(struct turn_at));
}

static void add_turn(struct turns *turns, nm x, nm y, int region)
{
	turns->list = memory_grow(turns->list, turns->count, &turns->capacity,
		sizeof *turns->list);
	memset(&turns->list[turns->count], 0, sizeof *turns->list);
	turns->list[turns->count].x = x;
	turns->list[turns->count].y = y;
	turns->list[turns->count++].region = region;
}

/* Sorts, and drops what is there twice. */
static void settle(struct turns *turns)
{
	size_t kept = 0;

	if (turns->count > 0)
		qsort(turns->list, turns->count, sizeof *turns->list, compare_turns);
	for (size_t i = 0; i < turns->count; i++)
		if (i == 0 || compare_turns(&turns->list[i], &turns->list[kept - 1]) != 0)
			turns->list[kept++] = turns->list[i];
	turns->count = kept;
}

static struct turns outline_turns(void)
{
	struct turns turns = { NULL, 0, 0 };
	const struct survey *survey = &garden.takeoff.survey;

	for (int region = 0; region < survey->region_count; region++) {
		struct outline outline;

		outline_trace(&outline, &arena, &garden.takeoff.plot, survey, region);
		for (int i = 0; i < outline.count; i++)
			for (int j = 0; j < outline.loops[i].count; j++)
				add_turn(&turns, outline.loops[i].corners[j].x * survey->cell,
					outline.loops[i].corners[j].y * survey->cell, region);
	}
	settle(&turns);
	return turns;
}

START_TEST(corners_are_those_of_all_outlines)
{
	struct turns found = { NULL, 0, 0 }, wanted;
	int number = 0;

	at_random(_i);
	for (int i = 0; i < setout.string_count; i++) {
		struct setout_walk walk = setout_along(&setout, &setout.strings[i]);
		struct setout_point point;

		while (setout_next(&walk, &point)) {
			if (point.kind != SETOUT_CORNER)
				continue;
			ck_assert_int_eq(point.number, ++number);
			ck_assert_int_ge(point.region_count, 1);
			for (int j = 0; j < point.region_count; j++)
				add_turn(&found, point.at.x, point.at.y, point.regions[j]);
		}
	}
	ck_assert_int_eq(number, setout.corner_count);
	wanted = outline_turns();
	ck_assert_uint_eq(found.count, wanted.count); /* none twice */
	settle(&found);
	ck_assert_uint_eq(found.count, wanted.count);
	for (size_t i = 0; i < wanted.count; i++)
		ck_assert_msg(compare_turns(&found.list[i], &wanted.list[i]) == 0, "seed %d", _i);
	free(found.list);
	free(wanted.list);
}
END_TEST

START_TEST(the_tape_meets_points_in_order_and_on_their_string)
{
	at_random(_i);
	for (int i = 0; i < setout.string_count; i++) {
		const struct setout_string *string = &setout.strings[i];
		struct setout_walk walk = setout_along(&setout, string);
		struct setout_point point;
		enum setout_kind kind = SETOUT_CORNER;
		nm last = -1;

		while (setout_next(&walk, &point)) {
			nm along = string->is_upright ? point.at.y : point.at.x;

			ck_assert_int_eq(string->is_upright ? point.at.x : point.at.y, string->at);
			ck_assert_int_eq(string->is_upright ? point.to.x : point.to.y, string->at);
			ck_assert_msg(along > last || (along == last && point.kind >= kind),
				"seed %d", _i);
			last = along;
			kind = point.kind;
		}
	}
}
END_TEST

/* ---- Strings --------------------------------------------------------------------------------- */

static void check_side(const struct survey *survey, int region, struct corner from,
	struct corner to)
{
	bool is_upright = from.x == to.x;
	const struct setout_string *string = string_at(is_upright,
		(is_upright ? from.x : from.y) * survey->cell);

	ck_assert_ptr_nonnull(string);
	ck_assert(is_guided(string, false, region));
}

START_TEST(each_side_of_an_outline_lies_on_a_string_that_guides_it)
{
	const struct survey *survey = &garden.takeoff.survey;

	at_random(_i);
	for (int region = 0; region < survey->region_count; region++) {
		struct outline outline;

		outline_trace(&outline, &arena, &garden.takeoff.plot, survey, region);
		for (int i = 0; i < outline.count; i++)
			for (int j = 0; j < outline.loops[i].count; j++)
				check_side(survey, region, outline.loops[i].corners[j],
					outline.loops[i].corners[(j + 1) %
					outline.loops[i].count]);
	}
}
END_TEST

/* The region of a cell: so many lines on, across the line, and i on along it. */
static int region_beside(bool is_upright, int line, int i)
{
	int x = is_upright ? line : i, y = is_upright ? i : line;

	return ground_holds(&garden.takeoff.plot.ground, x, y) ?
		survey_region_at(&garden.takeoff.survey, x, y) : NO_REGION;
}

/* Whether the region has a side of a cell on the line, cell by cell. */
static bool is_along(const struct survey *survey, int region, bool is_upright, int line)
{
	int cells = is_upright ? survey->rows : survey->columns;

	for (int i = 0; i < cells; i++) {
		int before = region_beside(is_upright, line - 1, i);
		int after = region_beside(is_upright, line, i);

		if (before != after && (before == region || after == region))
			return true;
	}
	return false;
}

static bool is_fence_along(const struct fencing *fencing, bool is_upright, nm at)
{
	bool is_any = false;

	for (int i = 0; i < fencing->leg_count; i++)
		is_any = is_any || (leg_is_upright(fencing->legs[i].on) == is_upright &&
			(is_upright ? fencing->legs[i].from.x : fencing->legs[i].from.y) == at);
	for (int i = 0; i < fencing->gate_count; i++)
		is_any = is_any || (leg_is_upright(fencing->gates[i].on) == is_upright &&
			(is_upright ? fencing->gates[i].from.x : fencing->gates[i].from.y) == at);
	return is_any;
}

static int fences_along(bool is_upright, nm at)
{
	const struct fences *fences = &garden.takeoff.fences;
	int count = 0;

	for (int f = 0; f < fences->count; f++)
		count += is_fence_along(&fences->list[f], is_upright, at);
	return count;
}

/* Few strings: one a line, none that guides nothing but the plan's four edges. */
START_TEST(a_string_guides_all_along_its_line_and_there_is_one_for_each)
{
	const struct survey *survey = &garden.takeoff.survey;
	int frames = 0;

	at_random(_i);
	for (int i = 0; i < setout.string_count; i++) {
		const struct setout_string *string = &setout.strings[i];
		int guided = fences_along(string->is_upright, string->at);

		ck_assert_ptr_eq(string_at(string->is_upright, string->at), string);
		for (int r = 0; string->at % survey->cell == 0 && r < survey->region_count; r++)
			guided += is_along(survey, r, string->is_upright,
				(int)(string->at / survey->cell));
		ck_assert_int_eq(string->guide_count, guided);
		ck_assert(guided > 0 || string->is_frame);
		frames += string->is_frame;
	}
	ck_assert_int_eq(frames, 4);
}
END_TEST

static void is_next(const struct setout_string *string, bool is_fence, int index, int *count)
{
	for (int i = 0; i < least(*count, SETOUT_NAMED_MOST); i++)
		if (string->guides[i].is_fence == is_fence && string->guides[i].index == index)
			return;
	if (*count < SETOUT_NAMED_MOST) {
		ck_assert_int_lt(*count, string->guide_count);
		ck_assert_int_eq(string->guides[*count].is_fence, is_fence);
		ck_assert_int_eq(string->guides[*count].index, index);
	}
	(*count)++;
}

/* Cell by cell along the line: of either side what is not the same across it. */
static void check_guides(const struct setout_string *string)
{
	const struct survey *survey = &garden.takeoff.survey;
	int cells = string->is_upright ? survey->rows : survey->columns, count = 0;
	int line = (int)(string->at / survey->cell);

	for (int f = 0; f < garden.takeoff.fences.count; f++)
		if (is_fence_along(&garden.takeoff.fences.list[f], string->is_upright, string->at))
			is_next(string, true, f, &count);
	for (int i = 0; string->at % survey->cell == 0 && i < cells; i++) {
		int before = region_beside(string->is_upright, line - 1, i);
		int after = region_beside(string->is_upright, line, i);

		if (before != after && before != NO_REGION)
			is_next(string, false, before, &count);
		if (before != after && after != NO_REGION)
			is_next(string, false, after, &count);
	}
	ck_assert_int_ge(string->guide_count, least(count, SETOUT_NAMED_MOST));
}

START_TEST(fences_are_named_first_then_regions_as_one_comes_to_them)
{
	at_random(_i);
	for (int i = 0; i < setout.string_count; i++)
		check_guides(&setout.strings[i]);
}
END_TEST

static enum setout_use first_use(const struct setout_string *string)
{
	enum setout_use first = USE_PATHS;

	for (int i = 0; i < string->guide_count && i < SETOUT_NAMED_MOST; i++) {
		static const enum setout_use of_class[] = { [CLASS_BED] = USE_BEDS,
			[CLASS_PATH] = USE_PATHS, [CLASS_LAWN] = USE_LAWNS,
			[CLASS_FIXTURE] = USE_FIXTURES };
		const struct region *region = &garden.takeoff.survey.regions[
			string->guides[i].is_fence ? 0 : string->guides[i].index];
		enum setout_use use = string->guides[i].is_fence ? USE_POSTS :
			region_is_raised(region) ? USE_WALLS : of_class[region->entry->class];

		first = use < first ? use : first;
	}
	return string->is_frame ? USE_FRAME : first;
}

START_TEST(what_stands_longest_is_pulled_first_and_paths_last)
{
	enum setout_use last = USE_FRAME;

	at_random(_i);
	for (int i = 0; i < setout.string_count; i++) {
		const struct setout_string *string = &setout.strings[i];

		ck_assert_int_ge(string->use, last);
		last = string->use;
		if (string->guide_count <= SETOUT_NAMED_MOST)
			ck_assert_int_eq(string->use, first_use(string));
	}
	ck_assert(!setout.strings[0].is_upright && setout.strings[0].at == 0);
	ck_assert(setout.strings[1].is_upright && setout.strings[1].at == 0);
	ck_assert(setout.strings[2].is_upright && setout.strings[2].at == setout.width);
	ck_assert(!setout.strings[3].is_upright && setout.strings[3].at == setout.height);
}
END_TEST

/* Boards 4 ft outside the dig: the bed's base reaches 6 in outside it. 40 ft by 30 ft. */
static void far_inside(int columns, int rows, int left, int top)
{
	garden_rectangle(&garden, '.', columns, rows);
	details_add_entry(&garden.plot.details, CLASS_BED, 'b', memory_string("Bed"));
	for (int y = top; y < top + 4; y++)
		for (int x = left; x < left + 8; x++)
			*ground_at(&garden.plot.ground, x, y) = 'b';
	set_out();
}

/* ---- Posts and gates ------------------------------------------------------------------------- */

static int times_come_to(enum setout_kind kind, int fence, int index, struct setout_point *at)
{
	int times = 0;

	for (int i = 0; i < setout.string_count; i++) {
		struct setout_walk walk = setout_along(&setout, &setout.strings[i]);
		struct setout_point point;

		while (setout_next(&walk, &point))
			if (point.kind == kind && point.mark.fence == fence &&
			    point.mark.index == index) {
				*at = point;
				times++;
			}
	}
	return times;
}

static bool is_spot(struct spot a, struct spot b)
{
	return a.x == b.x && a.y == b.y;
}

START_TEST(each_post_and_each_gate_is_come_to_once)
{
	const struct fences *fences = &garden.takeoff.fences;
	int posts = 0, gates = 0;

	at_random(3 * _i + 1);
	for (int f = 0; f < fences->count; f++) {
		const struct fencing *fencing = &fences->list[f];
		struct setout_point at;

		posts += fencing->post_count;
		gates += fencing->gate_count;
		for (int i = 0; i < fencing->post_count; i++) {
			ck_assert_int_eq(times_come_to(SETOUT_POST, f, i, &at), 1);
			ck_assert(is_spot(at.at, fencing->posts[i].at));
		}
		for (int i = 0; i < fencing->gate_count; i++) {
			const struct fence_gate *gate = &fencing->gates[i];

			ck_assert_int_eq(times_come_to(SETOUT_GATE, f, i, &at), 1);
			ck_assert((is_spot(at.at, gate->from) && is_spot(at.to, gate->to)) ||
				(is_spot(at.at, gate->to) && is_spot(at.to, gate->from)));
			ck_assert(at.at.x <= at.to.x && at.at.y <= at.to.y);
		}
		for (int i = 0; i < fencing->leg_count; i++) {
			const struct fence_leg *leg = &fencing->legs[i];
			bool is_upright = leg_is_upright(leg->on);
			const struct setout_string *string = string_at(is_upright,
				is_upright ? leg->from.x : leg->from.y);

			ck_assert_ptr_nonnull(string);
			ck_assert(is_guided(string, true, f));
		}
	}
	ck_assert_int_eq(setout.post_count, posts);
	ck_assert_int_eq(setout.gate_count, gates);
}
END_TEST

/* The right side is all gate: there is no leg along its string. */
START_TEST(a_gate_from_corner_to_corner_has_its_string)
{
	struct setout_point at;

	far_inside(40, 30, 12, 10);
	fences_run(&garden.plot, "2,20 10,20 10,24");
	fences_gate(&garden.plot, "10,20 10,24");
	set_out();
	ck_assert_int_eq(garden.takeoff.fences.list[0].gate_count, 1);
	ck_assert_int_eq(times_come_to(SETOUT_GATE, 0, 0, &at), 1);
	ck_assert_int_eq(at.at.x, at.to.x);
}
END_TEST

/* A line of two legs of each of 14 fences, then 14 paths below. */
START_TEST(the_first_12_are_named_and_all_are_counted)
{
	const struct setout_string *one, *other;

	garden_rows(&garden, ROWS { "............................",
		"p.p.p.p.p.p.p.p.p.p.p.p.p.p.", NULL });
	for (int i = 0; i < 14; i++) {
		char run[32];

		details_add_fence(&garden.plot.details, memory_string("Rail"));
		snprintf(run, sizeof run, "%d,1 %d,1", i, i + 1);
		fences_run(&garden.plot, run);
		snprintf(run, sizeof run, "%d,1 %d,1", i + 14, i + 14 + 1);
		fences_run(&garden.plot, run);
		fences_set(&garden.plot, FENCE_INSET, "0 in");
	}
	set_out();
	one = string_at(false, FOOT);
	other = string_at(false, 2 * FOOT);
	ck_assert(one && other);
	ck_assert_int_eq(one->guide_count, 28);
	ck_assert_int_eq(one->use, USE_POSTS);
	check_guides(one);
	ck_assert_int_eq(other->guide_count, 14);
	check_guides(other);
}
END_TEST

/* ---- Boards ---------------------------------------------------------------------------------- */

/* Common practice, no published source: boards 4 ft outside, past the base's reach of 6 in. */
START_TEST(boards_stand_4_ft_outside_what_is_dug)
{
	far_inside(40, 30, 12, 10);
	ck_assert_int_eq(setout.ends[SETOUT_LEFT].at, 12 * FOOT - 6 * INCH - 4 * FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_TOP].at, 10 * FOOT - 6 * INCH - 4 * FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_RIGHT].at, 20 * FOOT + 6 * INCH + 4 * FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_BOTTOM].at, 14 * FOOT + 6 * INCH + 4 * FOOT);
	for (int i = 0; i < SETOUT_SIDES; i++)
		ck_assert(!setout.ends[i].is_stake);
}
END_TEST

START_TEST(a_stake_stands_1_ft_inside_where_a_board_would_leave_the_plan)
{
	far_inside(40, 30, 4, 10); /* 4 ft less 6 in is not 4 ft */
	ck_assert(setout.ends[SETOUT_LEFT].is_stake);
	ck_assert_int_eq(setout.ends[SETOUT_LEFT].at, FOOT);
	ck_assert(!setout.ends[SETOUT_TOP].is_stake);
	teardown();
	far_inside(20, 15, 7, 10); /* a foot left at the bottom */
	ck_assert(!setout.ends[SETOUT_LEFT].is_stake);
	ck_assert(!setout.ends[SETOUT_RIGHT].is_stake);
	ck_assert_int_eq(setout.ends[SETOUT_RIGHT].at, 19 * FOOT + 6 * INCH);
	ck_assert(setout.ends[SETOUT_BOTTOM].is_stake);
	ck_assert_int_eq(setout.ends[SETOUT_BOTTOM].at, 14 * FOOT);
}
END_TEST

/* Open ground of 40 x 30 ft: frames alone. */
START_TEST(where_nothing_is_dug_stakes_stand_1_ft_inside_the_plan)
{
	garden_rectangle(&garden, OPEN_GROUND, 40, 30);
	set_out();
	ck_assert_int_eq(garden.takeoff.survey.region_count, 0);
	ck_assert_int_eq(setout.ends[SETOUT_LEFT].at, FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_TOP].at, FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_RIGHT].at, 39 * FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_BOTTOM].at, 29 * FOOT);
	for (int i = 0; i < SETOUT_SIDES; i++)
		ck_assert(setout.ends[i].is_stake);
	ck_assert_int_eq(setout.level_stakes, 1);
	ck_assert_int_eq(setout.upright_stakes, 0);
}
END_TEST

/* At 30 ft none is needed, over 30 ft one, over 60 ft two. */
START_TEST(a_long_string_has_stakes_between)
{
	garden_rectangle(&garden, 'p', 32, 33);
	set_out();
	ck_assert_int_eq(setout.level_stakes, 0);
	ck_assert_int_eq(setout.upright_stakes, 1);
	teardown();
	garden_rectangle(&garden, 'p', 62, 63);
	set_out();
	ck_assert_int_eq(setout.level_stakes, 1);
	ck_assert_int_eq(setout.upright_stakes, 2);
	teardown();
	garden_rectangle(&garden, 'p', 24, 25); /* 9 m and 9.4 m between stakes */
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "400 mm");
	set_out();
	ck_assert_int_eq(setout.level_stakes, 0);
	ck_assert_int_eq(setout.upright_stakes, 1);
	teardown();
	garden_rectangle(&garden, 'p', 2, 1); /* in the middle of one foot they are one */
	set_out();
	ck_assert_int_eq(setout.level_stakes, 0);
	ck_assert_int_eq(setout.upright_stakes, 0);
}
END_TEST

/* What is dug, point by point: cells, the reach of walls, holes. Clipped to the plan. */
static void dug_box(nm *left, nm *top, nm *right, nm *bottom)
{
	const struct takeoff *takeoff = &garden.takeoff;
	nm cell = takeoff->survey.cell;

	*left = setout.width, *top = setout.height, *right = *bottom = 0;
	for (int y = 0; y < takeoff->survey.rows; y++)
		for (int x = 0; x < takeoff->survey.columns; x++) {
			int region = survey_region_at(&takeoff->survey, x, y);
			nm reach = region != NO_REGION &&
				region_is_raised(&takeoff->survey.regions[region]) ? 6 * INCH : 0;

			if (region == NO_REGION)
				continue;
			if (plot_units(&takeoff->plot) == UNITS_METRIC && reach > 0)
				reach = 150 * NM_PER_MM;
			*left = x * cell - reach < *left ? x * cell - reach : *left;
			*top = y * cell - reach < *top ? y * cell - reach : *top;
			*right = (x + 1) * cell + reach > *right ? (x + 1) * cell + reach : *right;
			*bottom = (y + 1) * cell + reach > *bottom ? (y + 1) * cell + reach :
				*bottom;
		}
}

static void check_end(enum setout_side side, nm room, nm from_edge, nm plan, bool is_metric)
{
	nm board = is_metric ? 1200 * NM_PER_MM : 4 * FOOT;
	nm inside = is_metric ? 300 * NM_PER_MM : FOOT;

	ck_assert_int_eq(setout.ends[side].is_stake, room < board);
	if (room < board)
		ck_assert_int_eq(from_edge, inside < plan / 2 ? inside : plan / 2);
	else
		ck_assert_int_eq(from_edge, room - board);
}

START_TEST(each_string_crosses_both_boards_within_the_plan)
{
	nm left, top, right, bottom;
	bool is_metric;

	at_random(3 * _i); /* without fences */
	is_metric = plot_units(&garden.takeoff.plot) == UNITS_METRIC;
	dug_box(&left, &top, &right, &bottom);
	if (right > 0) {
		check_end(SETOUT_LEFT, left, setout.ends[SETOUT_LEFT].at, setout.width,
			is_metric);
		check_end(SETOUT_TOP, top, setout.ends[SETOUT_TOP].at, setout.height,
			is_metric);
		check_end(SETOUT_RIGHT, setout.width - right, setout.width -
			setout.ends[SETOUT_RIGHT].at, setout.width, is_metric);
		check_end(SETOUT_BOTTOM, setout.height - bottom, setout.height -
			setout.ends[SETOUT_BOTTOM].at, setout.height, is_metric);
	}
	for (int i = 0; i < setout.string_count; i++) {
		const struct setout_string *s = &setout.strings[i];

		ck_assert_int_eq(s->is_upright ? s->from.x : s->from.y, s->at);
		ck_assert_int_eq(s->is_upright ? s->to.x : s->to.y, s->at);
		ck_assert_int_eq(s->is_upright ? s->from.y : s->from.x, s->is_frame ? 0 :
			setout.ends[s->is_upright ? SETOUT_TOP : SETOUT_LEFT].at);
		ck_assert_int_eq(s->is_upright ? s->to.y : s->to.x, s->is_frame ?
			(s->is_upright ? setout.height : setout.width) :
			setout.ends[s->is_upright ? SETOUT_BOTTOM : SETOUT_RIGHT].at);
	}
}
END_TEST

/* A post's hole touches the plan's edge: nothing stands outside. */
START_TEST(holes_of_posts_count_as_dug)
{
	far_inside(40, 30, 12, 10);
	fences_run(&garden.plot, "10,20 30,20");
	set_out();
	const struct fencing *fencing = &garden.takeoff.fences.list[0];

	ck_assert_int_eq(setout.ends[SETOUT_BOTTOM].at,
		20 * FOOT + fencing->hole.across / 2 + 4 * FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_RIGHT].at,
		30 * FOOT + fencing->hole.across / 2 + 4 * FOOT);
}
END_TEST

/* ---- Diagonals and squares ------------------------------------------------------------------- */

/* The nearest whole number to a root: its square is within half of twice itself. */
static void is_hypotenuse(nm diagonal, nm width, nm height)
{
	nm2 off = (nm2)diagonal * diagonal - (nm2)width * width - (nm2)height * height;

	ck_assert(off <= diagonal && off >= -diagonal);
}

/* Pythagoras: Euclid, Elements, book I, proposition 47. */
START_TEST(diagonals_are_those_of_pythagoras)
{
	const struct survey *survey = &garden.takeoff.survey;
	int rectangles = 0, listed = 0;

	at_random(_i);
	is_hypotenuse(setout.diagonal, setout.width, setout.height);
	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];

		rectangles += region->cells == (region->most.x - region->left + 1) *
			(region->most.y - region->first_cell.y + 1);
	}
	for (int i = 0; i < setout.rectangle_count; i++) {
		const struct setout_rectangle *of = &setout.rectangles[i];

		is_hypotenuse(of->diagonal, of->columns * survey->cell, of->rows * survey->cell);
		listed += of->count;
		for (int j = 0; j < of->count && j < SETOUT_NAMED_MOST; j++) {
			const struct region *region = &survey->regions[of->regions[j]];

			ck_assert_int_eq(region->cells, of->columns * of->rows);
			ck_assert_int_eq(region->most.x - region->left + 1, of->columns);
			ck_assert(j == 0 || of->regions[j] > of->regions[j - 1]);
		}
		if (i > 0)
			ck_assert(of->columns > of[-1].columns || (of->columns ==
				of[-1].columns && of->rows > of[-1].rows));
	}
	ck_assert_int_eq(listed, rectangles);
}
END_TEST

/* By hand: 4 ft square, 67.882 in, is 5 ft 7 7/8 in to 1/8 in; 3 m by 4 m is 5 m. */
START_TEST(worked_diagonals)
{
	given(ROWS { "bbbb", "bbbb", "bbbb", "bbbb", NULL });
	ck_assert_int_eq(setout.rectangle_count, 1);
	ck_assert_int_eq(setout_rounded(setout.rectangles[0].diagonal, UNITS_IMPERIAL),
		67 * INCH + 7 * INCH / 8);
	teardown();
	garden_rectangle(&garden, 'p', 3, 4);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "1 m");
	set_out();
	ck_assert_int_eq(setout.diagonal, 5 * NM_PER_M);
}
END_TEST

/* Euclid, Elements, book I, proposition 48: where the squares of two sides are together the square
 * of the third, the angle between them is right. Common practice, no published source: 12-16-20. */
START_TEST(the_largest_3_4_5_that_fits_is_taken)
{
	nm most, unit;

	at_random(_i);
	unit = plot_units(&garden.takeoff.plot) == UNITS_METRIC ? 300 * NM_PER_MM : FOOT;
	most = setout.square[0] / (3 * unit);
	ck_assert_int_le(most, 4);
	ck_assert_int_eq(setout.square[0], 3 * most * unit);
	ck_assert_int_eq(setout.square[1], 4 * most * unit);
	ck_assert_int_eq(setout.square[2], 5 * most * unit);
	for (nm times = 1; times <= 4; times++) {
		bool fits = (3 * times * unit <= setout.width && 4 * times * unit <= setout.height)
			|| (4 * times * unit <= setout.width && 3 * times * unit <= setout.height);

		ck_assert_int_eq(fits, times <= most);
	}
	if (most > 0)
		ck_assert_int_le(setout.square[setout.is_long_across ? 1 : 0], setout.width);
	if (most > 0)
		ck_assert_int_le(setout.square[setout.is_long_across ? 0 : 1], setout.height);
}
END_TEST

START_TEST(a_worked_3_4_5)
{
	garden_rectangle(&garden, 'p', 11, 12); /* 9 by 12; 12 by 16 would be too much */
	set_out();
	ck_assert_int_eq(setout.square[0], 9 * FOOT);
	ck_assert_int_eq(setout.square[1], 12 * FOOT);
	ck_assert_int_eq(setout.square[2], 15 * FOOT);
	ck_assert(!setout.is_long_across);
	teardown();
	garden_rectangle(&garden, 'p', 12, 12); /* either way would do */
	set_out();
	ck_assert_int_eq(setout.square[2], 15 * FOOT);
	ck_assert(setout.is_long_across);
	teardown();
	garden_rectangle(&garden, 'p', 3, 3);
	set_out();
	ck_assert_int_eq(setout.square[2], 0);
}
END_TEST

/* ---- By hand --------------------------------------------------------------------------------- */

struct expected {
	nm at;
	bool is_upright;
	int guides, corners;
};

/* Two beds in a row share three strings of theirs with each other and with the path between. */
START_TEST(beds_in_a_row_share_strings)
{
	static const struct expected wanted[] = {
		{ 0, false, 0, 0 }, { 0, true, 0, 0 }, { 8, true, 0, 0 }, { 4, false, 0, 0 },
		{ 1, false, 3, 4 }, { 3, false, 3, 4 }, { 1, true, 1, 0 }, { 3, true, 2, 0 },
		{ 5, true, 2, 0 }, { 7, true, 1, 0 },
	};

	given(ROWS { "........", ".bbppbb.", ".bbppbb.", "........", NULL });
	ck_assert_int_eq(setout.string_count, 10);
	for (int i = 0; i < setout.string_count; i++) {
		const struct setout_string *string = &setout.strings[i];

		ck_assert_int_eq(string->at, wanted[i].at * FOOT);
		ck_assert_int_eq(string->is_upright, wanted[i].is_upright);
		ck_assert_int_eq(string->guide_count, wanted[i].guides);
		ck_assert_int_eq(string->corner_count, wanted[i].corners);
	}
	ck_assert_int_eq(setout.corner_count, 8);
	ck_assert_int_eq(setout.strings[5].first_corner, 5);
}
END_TEST

/* A frame has a hole: nobody stretches a tape across what stands in it. */
START_TEST(a_ring_is_no_rectangle_but_what_it_goes_round_is)
{
	given(ROWS { "pppp", "pFFp", "pppp", NULL });
	ck_assert_int_eq(setout.rectangle_count, 1);
	ck_assert_int_eq(setout.rectangles[0].columns, 2);
	ck_assert_int_eq(setout.rectangles[0].rows, 1);
}
END_TEST

/* 14 of one cell, then 2 by 1, 1 by 2 and 2 by 2: by columns, then rows. */
START_TEST(rectangles_are_listed_by_their_size_and_the_first_12_named)
{
	static const int sizes[][3] = { { 1, 1, 14 }, { 1, 2, 1 }, { 2, 1, 1 }, { 2, 2, 1 } };

	given(ROWS { "p.p.p.p.p.p.p.", ".p.p.p.p.p.p.p", "..............",
		"pp.pp.p.......", "...pp.p.......", NULL });
	ck_assert_int_eq(setout.rectangle_count, 4);
	for (int i = 0; i < 4; i++) {
		ck_assert_int_eq(setout.rectangles[i].columns, sizes[i][0]);
		ck_assert_int_eq(setout.rectangles[i].rows, sizes[i][1]);
		ck_assert_int_eq(setout.rectangles[i].count, sizes[i][2]);
	}
	for (int i = 0; i < SETOUT_NAMED_MOST; i++)
		ck_assert_int_eq(setout.rectangles[0].regions[i], i);
	ck_assert_int_eq(setout.rectangles[2].regions[0], 14);
}
END_TEST

/* Two cells that meet in a point: one point, where both turn. */
START_TEST(a_pinch_is_one_point)
{
	struct setout_walk walk;
	struct setout_point point;

	given(ROWS { "bp", "pb", NULL });
	ck_assert_int_eq(setout.corner_count, 9);
	walk = setout_along(&setout, string_at(false, FOOT));
	ck_assert(setout_next(&walk, &point) && point.at.x == 0);
	ck_assert(setout_next(&walk, &point) && point.at.x == FOOT);
	ck_assert_int_eq(point.region_count, 4);
}
END_TEST

START_TEST(an_empty_plan_has_its_frame_alone)
{
	given(ROWS { "...", "...", NULL });
	ck_assert_int_eq(setout.string_count, 4);
	for (int i = 0; i < SETOUT_SIDES; i++)
		ck_assert(setout.ends[i].is_stake);
	ck_assert_int_eq(setout.ends[SETOUT_LEFT].at, FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_BOTTOM].at, FOOT);
	ck_assert_int_eq(setout.ends[SETOUT_RIGHT].at, 2 * FOOT);
	ck_assert_int_eq(setout.corner_count + setout.post_count + setout.rectangle_count, 0);
}
END_TEST

/* Stopped wherever it asks, it comes back without harm, and then does the whole. */
START_TEST(it_can_be_stopped_anywhere)
{
	struct stopper stopper;
	int64_t asks;
	int strings;

	at_random(3 * _i + 2);
	strings = setout.string_count;
	stopper_begin(&stopper, 0);
	setout_make(&setout, &arena, &garden.takeoff.plot, &garden.takeoff.survey,
		&garden.takeoff.fences);
	asks = stopper.asks;
	stopper_end();
	ck_assert_int_gt(asks, 10);
	for (int64_t at = 1; at <= asks; at++) {
		stopper_begin(&stopper, at);
		setout_make(&setout, &arena, &garden.takeoff.plot, &garden.takeoff.survey,
			&garden.takeoff.fences);
		stopper_end();
		arena_clear(&arena);
	}
	set_out();
	ck_assert_int_eq(setout.string_count, strings);
}
END_TEST

START_TEST(offsets_are_rounded_to_an_eighth_or_a_millimetre)
{
	ck_assert_int_eq(setout_rounded(INCH / 16, UNITS_IMPERIAL), INCH / 8);
	ck_assert_int_eq(setout_rounded(INCH / 16 - 1, UNITS_IMPERIAL), 0);
	ck_assert_int_eq(setout_rounded(3 * INCH + 3 * INCH / 16, UNITS_IMPERIAL),
		3 * INCH + INCH / 4);
	ck_assert_int_eq(setout_rounded(-INCH / 16, UNITS_IMPERIAL), -INCH / 8);
	ck_assert_int_eq(setout_rounded(1 - INCH / 16, UNITS_IMPERIAL), 0);
	ck_assert_int_eq(setout_rounded(1499999, UNITS_METRIC), NM_PER_MM);
	ck_assert_int_eq(setout_rounded(1500000, UNITS_METRIC), 2 * NM_PER_MM);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("setout");
	TCase *laws = suite_case(suite, "laws"), *cases = suite_case(suite, "cases");
	int tries = runner_count(TRIES, 20 * TRIES);

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, corners_are_those_of_all_outlines, 0, tries);
	tcase_add_loop_test(laws, the_tape_meets_points_in_order_and_on_their_string, 0, tries);
	tcase_add_loop_test(laws, each_side_of_an_outline_lies_on_a_string_that_guides_it, 0,
		tries);
	tcase_add_loop_test(laws, a_string_guides_all_along_its_line_and_there_is_one_for_each, 0,
		tries);
	tcase_add_loop_test(laws, fences_are_named_first_then_regions_as_one_comes_to_them, 0,
		tries);
	tcase_add_loop_test(laws, what_stands_longest_is_pulled_first_and_paths_last, 0, tries);
	tcase_add_loop_test(laws, each_post_and_each_gate_is_come_to_once, 0, tries);
	tcase_add_loop_test(laws, each_string_crosses_both_boards_within_the_plan, 0, tries);
	tcase_add_loop_test(laws, diagonals_are_those_of_pythagoras, 0, tries);
	tcase_add_loop_test(laws, the_largest_3_4_5_that_fits_is_taken, 0, tries);
	tcase_add_loop_test(laws, it_can_be_stopped_anywhere, 0, tries / 4);
	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, boards_stand_4_ft_outside_what_is_dug);
	tcase_add_test(cases, a_stake_stands_1_ft_inside_where_a_board_would_leave_the_plan);
	tcase_add_test(cases, where_nothing_is_dug_stakes_stand_1_ft_inside_the_plan);
	tcase_add_test(cases, a_long_string_has_stakes_between);
	tcase_add_test(cases, a_gate_from_corner_to_corner_has_its_string);
	tcase_add_test(cases, the_first_12_are_named_and_all_are_counted);
	tcase_add_test(cases, rectangles_are_listed_by_their_size_and_the_first_12_named);
	tcase_add_test(cases, holes_of_posts_count_as_dug);
	tcase_add_test(cases, worked_diagonals);
	tcase_add_test(cases, a_worked_3_4_5);
	tcase_add_test(cases, beds_in_a_row_share_strings);
	tcase_add_test(cases, a_ring_is_no_rectangle_but_what_it_goes_round_is);
	tcase_add_test(cases, a_pinch_is_one_point);
	tcase_add_test(cases, an_empty_plan_has_its_frame_alone);
	tcase_add_test(cases, offsets_are_rounded_to_an_eighth_or_a_millimetre);
	return suite;
}
