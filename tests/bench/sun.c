/* What counting hours of sun takes on plans of 200 x 200 cells, over the seven usual days: as time
 * of the processor, and, since machines differ, as ratios to passes over counts of 16 bits, each
 * read, added to and written, one pass for every place of the sun: what marking each cell by itself
 * would take at the least. Once as compilers make them where they do not know how many cells there
 * are, one after the other; once with 16 side by side.
 *
 * Then what a stroke takes where a plant needs sun and the plan shows it: the takeoff with its
 * hours, and all until the layer is there. */
#include "plot/edit/lay.h"
#include "report/panel/pages.h"
#include "support/plots.h"
#include "support/shapes.h"
#include "takeoff/sun/plant_sun.h"
#include "takeoff/sun/sun_hours.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { SIZE = 200, ROUNDS = 15, PASSES = 200, STROKES = 15, SIDE_BY_SIDE = 16,
	MIGHT_BE_DRAWN = 4 /* of the shapes, the first ones */ };
#define ROUNDS_MS 1000 /* no more rounds are begun after that */

static double now_ms(void)
{
	struct timespec t;

	clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

/* ---- Passes ---------------------------------------------------------------------------------- */

static volatile size_t cells = (size_t)SIZE * SIZE;

static void pass(uint16_t *counts)
{
	for (size_t i = 0, count = cells; i < count; i++)
		counts[i]++;
}

static void pass_side_by_side(uint16_t *counts)
{
	for (size_t i = 0, count = cells; i < count; i += SIDE_BY_SIDE)
		for (size_t j = 0; j < SIDE_BY_SIDE; j++)
			counts[i + j]++;
}

/* What one takes, in ms. */
static double pass_time(void (*pass_once)(uint16_t *counts))
{
	uint16_t *counts = memory_new((size_t)SIZE * SIZE, sizeof *counts);
	double least = 1e9;

	for (int round = 0; round < ROUNDS; round++) {
		double start = now_ms(), time;

		for (int i = 0; i < PASSES; i++)
			pass_once(counts);
		time = (now_ms() - start) / PASSES;
		least = time < least ? time : least;
	}
	free(counts);
	return least;
}

/* ---- Hours ----------------------------------------------------------------------------------- */

/* *rays: how many places of the sun there are. */
static double hours_time(const struct takeoff *takeoff, const struct date *days, int *rays)
{
	struct arena arena = ARENA_EMPTY;
	struct sun_hours sun;
	double start = now_ms();

	*rays = 0;
	sun_begin(&sun, &arena, takeoff, days, SUN_USUAL_DAYS);
	for (int i = 0; i < SUN_USUAL_DAYS; i++)
		sun_count(&sun);
	sun_finish(&sun);
	start = now_ms() - start;
	for (int i = 0; i < SUN_USUAL_DAYS; i++)
		*rays += (int)(sun.days[i].length * SUN_STEPS_AN_HOUR);
	arena_clear(&arena);
	return start;
}

/* A fence around but for the upper side, a house, trees and a hedge; behind the fence go plants. */
static void add_around(struct plot *plot, const char *plants)
{
	plot_set(plot, 0, HEAD_SITE, "45");
	plot_add_lines(plot, "fence \"Fence\"\n  run 0,0 0,200 200,200 200,0\n");
	plot_add_lines(plot, plants);
	plot_add_lines(plot, "shade \"House\" 24 ft\n  from 20,-40 to 60,-8\n"
		"shade \"Limes\" 40 ft\n  from 150,205 to 190,220\n"
		"shade \"Hedge\" 6 ft\n  from 201,0 to 203,199\n");
}

/* By what a pass takes, one after the other and side by side. */
static void measure(const struct shape *shape, double one, double side_by_side)
{
	struct arena arena = ARENA_EMPTY;
	struct date days[SUN_USUAL_DAYS];
	struct takeoff takeoff;
	struct plot plot;
	double hours = 1e9, begun = now_ms();
	int rays = 0;

	shape->draw(&plot, SIZE);
	add_around(&plot, "");
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	sun_usual_days(45, days);
	for (int i = 0; i < ROUNDS && now_ms() < begun + ROUNDS_MS; i++) {
		double time = hours_time(&takeoff, days, &rays);

		hours = time < hours ? time : hours;
	}
	printf("  %-15s %8.2f ms %11.2f %13.2f\n", shape->name, hours,
		hours / (one * rays), hours / (side_by_side * rays));
	arena_clear(&arena);
	plot_fini(&plot);
}

/* ---- Strokes --------------------------------------------------------------------------------- */

/* How long from a stroke on until its takeoff is there, with the hours of sun, and all it takes to
 * show them on the plan; the least of several. */
struct answer {
	double takeoff, with_sun, shown;
};

static void stroke(struct answer *least, struct plot *plot, struct pages *pages, int i)
{
	struct arena arena = ARENA_EMPTY;
	struct answer time;
	struct takeoff takeoff;
	double start = now_ms();

	lay_rectangle(plot, rectangle_between(70 + i, 70, 70 + i, 70), i % 2 ? 'b' : 'p');
	takeoff_compute(&takeoff, &arena, plot, NULL);
	time.takeoff = now_ms() - start;
	takeoff_add_sun(&takeoff, &arena);
	time.with_sun = now_ms() - start;
	pages_renew(pages);
	pages_make(pages, pages_of_sun(), &takeoff, plot, NULL);
	time.shown = now_ms() - start;
	if (time.shown < least->shown)
		*least = time;
	arena_clear(&arena);
}

static void measure_strokes(const struct shape *shape)
{
	struct answer least = { .shown = 1e9 };
	struct pages pages = { .pages[0].is_made = false };
	struct plot plot;

	shape->draw(&plot, SIZE);
	add_around(&plot, "plant z \"Rose\"\n  sun full\n  at 60,60\n  at 120,120\n");
	for (int i = 0; i < STROKES; i++)
		stroke(&least, &plot, &pages, i);
	printf("  %-15s %8.2f ms %8.2f ms %8.2f ms %8.2f\n", shape->name, least.takeoff,
		least.with_sun, least.shown, least.shown / least.takeoff);
	pages_fini(&pages);
	plot_fini(&plot);
}

int main(void)
{
	double one = pass_time(pass), side_by_side = pass_time(pass_side_by_side);

	printf("hours of sun    %d x %d cells  of passes   side by side\n", SIZE, SIZE);
	for (int i = 0; i < shape_count; i++)
		measure(&shapes[i], one, side_by_side);
	printf("a stroke           takeoff    with sun    layer there    ratio\n");
	for (int i = 0; i < MIGHT_BE_DRAWN; i++)
		measure_strokes(&shapes[i]);
	return 0;
}
