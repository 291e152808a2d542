/* How long the answer to a stroke takes on the largest sample: laying a cell with its images,
 * recording it for undo, the whole takeoff, all pages of the panel. Printed as times and, since
 * machines differ, as ratios to reading the same plot's file once in the same run. */
#include "plot/history/history.h"
#include "plot/edit/lay.h"
#include "plot/history/store.h"
#include "report/panel/pages.h"
#include "takeoff/takeoff.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { STROKES = 201, READINGS = 21 };

static const char sample[] = "plots/great-court.plot";

static double now_ms(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static int compare(const void *a, const void *b)
{
	const double *one = a, *other = b;

	return (*one > *other) - (*one < *other);
}

static double median(double *times, size_t count)
{
	qsort(times, count, sizeof *times, compare);
	return times[count / 2];
}

static bool plot_read(struct plot *plot)
{
	struct text message = TEXT_EMPTY;
	bool done;

	plot_init(plot);
	done = store_read(sample, plot, &message);
	if (!done)
		fprintf(stderr, "%s\n", message.bytes);
	text_fini(&message);
	return done;
}

static double reading_time(void)
{
	double times[READINGS];

	for (int i = 0; i < READINGS; i++) {
		struct plot plot;
		double start = now_ms();

		if (!plot_read(&plot))
			exit(1);
		times[i] = now_ms() - start;
		plot_fini(&plot);
	}
	return median(times, READINGS);
}

static void answer(struct plot *plot, struct history *history, struct pages *pages, int i)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	int x = 10 + i % 80, y = 10 + i * 7 % 80;

	lay_rectangle(plot, rectangle_between(x, y, x, y), i % 2 ? 'b' : 'p');
	history_record(history, plot, "");
	takeoff_compute(&takeoff, &arena, plot, NULL);
	pages_renew(pages);
	for (int page = 0; page < pages_count(); page++)
		if (!page_is_of_saved(page))
			pages_make(pages, page, &takeoff, plot, NULL);
	arena_clear(&arena);
}

int main(void)
{
	double times[STROKES], reading = reading_time(), middle;
	struct pages pages = { .pages[0].is_made = false };
	struct history *history;
	struct plot plot;

	if (!plot_read(&plot))
		return 1;
	history = history_new(&plot);
	for (int i = 0; i < STROKES; i++) {
		double start = now_ms();

		answer(&plot, history, &pages, i);
		times[i] = now_ms() - start;
	}
	middle = median(times, STROKES);
	printf("%s, %d strokes\n", sample, STROKES);
	printf("  a stroke and its figures   median %.3f ms, slowest %.3f ms\n", middle,
		times[STROKES - 1]);
	printf("  reading the file           median %.3f ms\n", reading);
	printf("  ratio                      %.1f readings a stroke\n", middle / reading);
	pages_fini(&pages);
	history_free(history);
	plot_fini(&plot);
	return 0;
}
