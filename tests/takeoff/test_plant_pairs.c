/* Plants too close to one another, and behind taller ones, on random gardens: against all pairs of
 * plants there are. */
#include "support/beds.h"
#include "support/fencing.h"
#include "support/planting.h"
#include "support/runner.h"
#include "takeoff/planting/bands.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { MOST = 9, KINDS = 3 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* ---- Gardens --------------------------------------------------------------------------------- */

/* Specimens here and there, a drift or two. By a 64th of an inch no spread ends right where another
 * plant stands. */
static void plant_at_random(struct random *random, char letter)
{
	static const char *const drifts[] = { "", "  drift b whole\n", "  drift b front\n",
		"  drift b front\n  drift b back\n" };
	const struct ground *ground = &garden.plot.ground;
	int first = random_below(random, ground->columns), specimens = random_below(random, 10);
	char lines[600];
	int length = snprintf(lines, sizeof lines, "plant %c \"%c\"\n  spacing %d in\n"
		"  spread %d 1/64 in\n", letter, letter, random_between(random, 8, 20),
		random_between(random, 8, 34));

	if (random_below(random, 6))
		length += snprintf(lines + length, sizeof lines - (size_t)length,
			"  height %d in\n", random_between(random, 6, 9));
	for (int i = 0; i < specimens && i < ground->columns; i++)
		length += snprintf(lines + length, sizeof lines - (size_t)length, "  at %d,%d\n",
			(first + i) % ground->columns, random_below(random, ground->rows));
	snprintf(lines + length, sizeof lines - (size_t)length, "%s",
		drifts[random_below(random, 4)]);
	plot_add_lines(&garden.plot, lines);
}

static void garden_at_random(struct random *random)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	if (random_below(random, 2))
		plot_at_random(&garden.plot, random, MOST, "bbccbl.p");
	else
		beds_at_random(&garden.plot, random, 3, 2);
	for (int i = 0; i < 2; i++)
		if (plot_entry(&garden.plot, "bc"[i]))
			plot_set(&garden.plot, "bc"[i], BED_BUILD, "level");
	if (random_below(random, 3) == 0)
		fences_at_random(&garden.plot, random);
	for (int kind = 0; kind < KINDS; kind++)
		plant_at_random(random, (char)('x' + kind));
	garden_count(&garden);
}

/* ---- All pairs ------------------------------------------------------------------------------- */

static const struct plant_sum *sum_of(int kind)
{
	return &garden.takeoff.planting.plants[kind];
}

/* Fails the test unless there is a snag with these words to it; its kind, where that is asked. */
static void check_told(int seed, enum snag_code code, const struct planting_row *row, int spot,
	const nm figures[static SNAG_FIGURES], int kind)
{
	struct spot at = row->spots[spot].at;
	nm cell = garden.takeoff.survey.cell;
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, code, i)); i++)
		if (snag->region == row->region && snag->cell.x == at.x / cell &&
			snag->cell.y == at.y / cell && (kind < 0 || snag->kind == kind) &&
			memcmp(snag->figures, figures, SNAG_FIGURES * sizeof *figures) == 0)
			return;
	ck_abort_msg("seed %d: code %d of row %d, spot %d, %d and %d, is not told", seed, (int)code,
		(int)(row - garden.takeoff.planting.list), spot, (int)figures[0],
		(int)figures[1]);
}

/* The nearest of a kind to a spot, a specimen or not; -1 where all are half of both spreads away or
 * more. Where two are as near: is_specimen is -1 if one is a specimen and the other is not. */
static double nearest(const struct planting_row *row, int spot, int kind, int *is_specimen)
{
	const struct planting *planting = &garden.takeoff.planting;
	struct spot at = row->spots[spot].at;
	nm twice = sum_of(row->kind)->spread + sum_of(kind)->spread;
	double least = -1;

	for (int i = 0; i < planting->count; i++) {
		const struct planting_row *other = &planting->list[i];

		for (int j = 0; other->kind == kind && j < other->spot_count; j++) {
			nm x = other->spots[j].at.x - at.x, y = other->spots[j].at.y - at.y;
			double away = hypot((double)x, (double)y);
			int is_one = j < other->specimens;

			if ((other == row && j == spot) || 2 * away >= (double)twice ||
				(least >= 0 && llround(away) > llround(least)))
				continue;
			*is_specimen = least >= 0 && llround(away) == llround(least) &&
				*is_specimen != is_one ? -1 : is_one;
			least = away;
		}
	}
	return least;
}

/* Whose spread is the wider one; of plants in drifts, by more than their spacing. */
static int takes_more(int one, int other, int close)
{
	nm more = sum_of(other)->spread - sum_of(one)->spread;

	if (close == PLANT_CLOSE_DRIFTS)
		more -= sum_of(other)->spacing - sum_of(one)->spacing;
	return more > 0 ? other : one;
}

/* Whether one of the row is too close to one of the kind; the first that is must be told. */
static bool check_close(int seed, const struct planting_row *row, int kind)
{
	for (int spot = 0; spot < row->spot_count; spot++) {
		int is_specimen = 0, close, first;
		double away = nearest(row, spot, kind, &is_specimen);

		if (away < 0)
			continue;
		if (is_specimen < 0)
			return true;
		close = spot < row->specimens && is_specimen ? PLANT_CLOSE_SPECIMENS :
			PLANT_CLOSE_DRIFTS;
		first = takes_more(row->kind, kind, close);
		check_told(seed, SNAG_PLANT_CLOSE, row, spot, SNAG_FIGURES_OF(first, first == kind ?
			row->kind : kind, llround(away), (sum_of(row->kind)->spread +
			sum_of(kind)->spread) / 2), close);
		return true;
	}
	return false;
}

/* Of two kinds the one that is earlier in the plot says it. */
START_TEST(each_pair_that_is_too_close_is_told_once)
{
	const struct planting *planting = &garden.takeoff.planting;
	int all = 0;

	for (int seed = 0; seed < runner_count(500, 4000); seed++) {
		struct random random = { (uint64_t)seed };
		int told = 0;

		garden_at_random(&random);
		for (int i = 0; i < planting->count; i++)
			for (int kind = planting->list[i].kind; kind < KINDS; kind++)
				told += check_close(seed, &planting->list[i], kind);
		ck_assert_msg(planting_snags(&garden, SNAG_PLANT_CLOSE) == told, "seed %d", seed);
		all += told;
		teardown();
	}
	ck_assert_int_gt(all, 60);
}
END_TEST

/* ---- In front -------------------------------------------------------------------------------- */

/* How far a spot is off the line between two; -1: before it or, by more than what is rounded, past
 * its end. */
static double off_line(struct spot from, struct spot to, struct spot at)
{
	double x = (double)(to.x - from.x), y = (double)(to.y - from.y), length = hypot(x, y);
	double to_x = (double)(at.x - from.x), to_y = (double)(at.y - from.y);
	double along = (x * to_x + y * to_y) / length;

	return along <= 0 || along > length + 1e-3 ? -1 : fabs(y * to_x - x * to_y) / length;
}

static bool hides(const struct planting_row *front, struct spot from, struct spot to)
{
	double half = (double)sum_of(front->kind)->spread / 2;

	for (int i = 0; i < front->spot_count; i++) {
		double off = off_line(from, to, front->spots[i].at);

		if (off >= 0 && off < half)
			return true;
	}
	return false;
}

/* Whether one of a row of the same bed hides one of the other; the first must be told. */
static bool check_front(int seed, const struct planting_row *row, const struct planting_row *front,
	const struct bands *bands)
{
	nm cell = garden.takeoff.survey.cell;

	for (int spot = 0; spot < row->spot_count; spot++) {
		struct spot at = row->spots[spot].at;
		struct half_point edge;

		if (!bands_nearest(bands, (int)(at.x / cell), (int)(at.y / cell), &edge) ||
			!hides(front, at, (struct spot){ edge.x * cell / 2, edge.y * cell / 2 }))
			continue;
		check_told(seed, SNAG_PLANT_FRONT, row, spot, SNAG_FIGURES_OF(front->kind,
			sum_of(front->kind)->height, row->kind, sum_of(row->kind)->height), -1);
		return true;
	}
	return false;
}

static int check_bed(int seed, int region, const struct bands *bands)
{
	const struct planting *planting = &garden.takeoff.planting;
	int told = 0;

	for (int i = 0; i < planting->count; i++)
		for (int j = 0; j < planting->count; j++) {
			const struct planting_row *row = &planting->list[i];
			const struct planting_row *front = &planting->list[j];
			nm height = sum_of(row->kind)->height;

			if (row->region == region && front->region == region && height > 0 &&
				sum_of(front->kind)->height > height)
				told += check_front(seed, row, front, bands);
		}
	return told;
}

static int check_beds(int seed)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct arena arena = ARENA_EMPTY;
	struct fence_map fences = fence_map_of(&garden.plot, &arena);
	struct house_map houses = house_map_of(&garden.plot, 0, &arena);
	int told = 0;

	for (int region = 0; region < survey->region_count; region++) {
		struct bands bands;

		if (survey->regions[region].entry->class != CLASS_BED)
			continue;
		bands_find(&bands, survey, &fences, &houses, region);
		told += check_bed(seed, region, &bands);
		bands_end(&bands);
	}
	arena_clear(&arena);
	return told;
}

START_TEST(what_a_taller_one_hides_from_where_one_walks_up_is_told_once)
{
	int all = 0;

	for (int seed = 0; seed < runner_count(500, 4000); seed++) {
		struct random random = { (uint64_t)seed };
		int told;

		garden_at_random(&random);
		told = check_beds(seed);
		ck_assert_msg(planting_snags(&garden, SNAG_PLANT_FRONT) == told, "seed %d", seed);
		all += told;
		teardown();
	}
	ck_assert_int_gt(all, 60);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plant pairs");
	TCase *pairs = suite_case(suite, "pairs");

	tcase_add_checked_fixture(pairs, NULL, teardown);
	tcase_add_test(pairs, each_pair_that_is_too_close_is_told_once);
	tcase_add_test(pairs, what_a_taller_one_hides_from_where_one_walks_up_is_told_once);
	return suite;
}
