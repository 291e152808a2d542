/* What a large plot costs between two keys: of each of the hardest shapes the whole takeoff, and as
 * ratios to it, since machines differ, what stands between a key and its answer: the longest time
 * without an ask whether to stop, letting go of what was half counted, recording a stroke, and the
 * longest page made and compared. */
#include "base/stop.h"
#include "plot/history/history.h"
#include "report/panel/pages.h"
#include "support/shapes.h"
#include "takeoff/takeoff.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { SIZE = 512 };

static double now_ms(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

/* Watches how long it takes from ask to ask. */
struct gaps {
	struct stop_watch watch; /* first */
	double last, longest;
};

static bool measure(struct stop_watch *watch)
{
	struct gaps *gaps = (struct gaps *)watch;
	double now = now_ms();

	if (now - gaps->last > gaps->longest)
		gaps->longest = now - gaps->last;
	gaps->last = now_ms();
	return false;
}

static double longest_gap(const struct plot *plot)
{
	struct gaps gaps = { .watch.is_wanted = measure, .last = now_ms() };
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;

	stop_watch_by(&gaps.watch);
	takeoff_compute(&takeoff, &arena, plot, NULL);
	stop_watch_by(NULL);
	arena_clear(&arena);
	return gaps.longest;
}

static double stroke_time(struct plot *plot)
{
	struct history *history = history_new(plot);
	double start;

	*ground_at(&plot->ground, SIZE / 2, SIZE / 2) = OPEN_GROUND;
	start = now_ms();
	history_record(history, plot, "");
	start = now_ms() - start;
	history_free(history);
	return start;
}

/* Of the page that takes longest. */
static double page_time(const struct takeoff *takeoff, const struct plot *plot)
{
	struct pages pages = { .pages[0].is_made = false };
	double longest = 0;

	for (int again = 0; again < 2; again++, pages_renew(&pages)) {
		for (int page = 0; page < pages_count(); page++) {
			double start = now_ms();

			if (page_is_of_saved(page))
				continue;
			pages_make(&pages, page, takeoff, plot, NULL);
			if (now_ms() - start > longest)
				longest = now_ms() - start;
		}
	}
	pages_fini(&pages);
	return longest;
}

static void measure_shape(const struct shape *shape)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	struct plot plot;
	double whole, page, start = 0, freed, stroke;

	shape->draw(&plot, SIZE);
	stroke = stroke_time(&plot);
	start = now_ms();
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	whole = now_ms() - start;
	page = page_time(&takeoff, &plot);
	start = now_ms();
	arena_clear(&arena);
	freed = now_ms() - start;
	printf("  %-15s %8.0f ms %8.4f %8.4f %8.4f %8.4f\n", shape->name, whole,
		longest_gap(&plot) / whole, freed / whole, stroke / whole, page / whole);
	plot_fini(&plot);
}

int main(void)
{
	printf("%d x %d cells  the takeoff  longest  letting  a stroke  longest\n"
		"                             gap      go                 page\n", SIZE, SIZE);
	for (int i = 0; i < shape_count; i++)
		measure_shape(&shapes[i]);
	return 0;
}
