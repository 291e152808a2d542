/* What counting hours of sun takes on plans of 200 x 200 cells, over the seven usual days: as time,
 * and, since machines differ, as a ratio to one pass over counts of 16 bits, each read, added to
 * and written, for every place of the sun: what marking each cell by itself would take at the
 * least, as compilers make it where they do not know how many cells there are. */
#include "support/shapes.h"
#include "takeoff/sun/sun_hours.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { SIZE = 200, ROUNDS = 15 };

static double now_ms(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static double passes_time(uint16_t *counts, int passes)
{
	static volatile size_t cells = (size_t)SIZE * SIZE;
	double start = now_ms();

	for (int i = 0; i < passes; i++)
		for (size_t j = 0, count = cells; j < count; j++)
			counts[j]++;
	return now_ms() - start;
}

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

static void add_around(struct plot *plot)
{
	struct obstacles *shades = &plot->details.around.shades;
	struct fence *fence = details_add_fence(&plot->details, memory_string("Fence"));

	route_add(fence_add_run(fence), (struct place){ 0, 0 });
	route_add(&fence->runs[0], (struct place){ 0, SIZE });
	route_add(&fence->runs[0], (struct place){ SIZE, SIZE });
	route_add(&fence->runs[0], (struct place){ SIZE, 0 });
	obstacles_add(shades, memory_string("House"))->cells =
		(struct rectangle){ 20, -40, 60, -8 };
	obstacles_add(shades, memory_string("Limes"))->cells =
		(struct rectangle){ 150, 205, 190, 220 };
	shades->items[0].height = 24 * NM_PER_FOOT;
	shades->items[1].height = 40 * NM_PER_FOOT;
	block_set(&plot->details.head, HEAD_SITE,
		(struct value){ .set = true, .as.number = 45 * MILLION });
}

static void measure(const struct shape *shape)
{
	uint16_t *counts = memory_new((size_t)SIZE * SIZE, sizeof *counts);
	struct arena arena = ARENA_EMPTY;
	struct date days[SUN_USUAL_DAYS];
	struct takeoff takeoff;
	struct plot plot;
	double hours = 1e9, passes = 1e9;
	int rays = 0;

	shape->draw(&plot, SIZE);
	add_around(&plot);
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	sun_usual_days(45, days);
	for (int i = 0; i < ROUNDS; i++) {
		double time = hours_time(&takeoff, days, &rays);

		hours = time < hours ? time : hours;
		time = passes_time(counts, rays);
		passes = time < passes ? time : passes;
	}
	printf("  %-15s %8.2f ms %8.2f ms %8.2f\n", shape->name, hours, passes, hours / passes);
	arena_clear(&arena);
	plot_fini(&plot);
	free(counts);
}

int main(void)
{
	printf("hours of sun    %d x %d cells     passes    ratio\n", SIZE, SIZE);
	for (int i = 0; i < shape_count; i++)
		measure(&shapes[i]);
	return 0;
}
