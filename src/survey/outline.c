#include "survey/outline.h"
#include "base/number.h"
#include "base/stop.h"

#include <assert.h>
#include <stdint.h>
#include <stdlib.h>

enum direction { RIGHT, DOWN, LEFT, UP };

static const struct place steps[] = { { 1, 0 }, { 0, 1 }, { -1, 0 }, { 0, -1 } };

/* A grid point and the way one leaves it, the region on the right hand. */
struct walker {
	int x, y;
	enum direction heading;
	bool reflex; /* how one turned there */
};

/* True where the cell is in the plan and has the letter. Cells that share a side with one of a
 * region belong to it if they have its letter, so letters are enough to follow it. */
static bool is_own(const struct ground *ground, char letter, int x, int y)
{
	return ground_holds(ground, x, y) && ground_cell(ground, x, y) == letter;
}

/* The cells ahead of a grid point, to the right and to the left of one's heading. */
static struct place ahead(const struct walker *w, bool right)
{
	static const struct place cells[4][2] = {
		/* left, right; the cell whose top left corner is the point is 0,0 */
		[RIGHT] = { { 0, -1 }, { 0, 0 } },
		[DOWN] = { { 0, 0 }, { -1, 0 } },
		[LEFT] = { { -1, 0 }, { -1, -1 } },
		[UP] = { { -1, -1 }, { 0, -1 } },
	};
	struct place cell = cells[w->heading][right];

	return (struct place){ w->x + cell.x, w->y + cell.y };
}

/* Walks on along the outline to the next corner and turns there. Returns how far it was. */
static int64_t walk_side(struct walker *w, const struct ground *ground, char letter)
{
	for (int64_t length = 1;; length++) {
		struct place left, right;
		bool is_own_right;

		w->x += steps[w->heading].x;
		w->y += steps[w->heading].y;
		right = ahead(w, true);
		left = ahead(w, false);
		is_own_right = is_own(ground, letter, right.x, right.y);
		if (!is_own_right || is_own(ground, letter, left.x, left.y)) {
			w->heading = (w->heading + (is_own_right ? 3 : 1)) % 4;
			w->reflex = is_own_right;
			return length;
		}
	}
}

/* What a trace works on. */
struct trace {
	struct arena *arena;
	const struct ground *ground;
	const struct region *region;
	char letter;
	/* Level sides with the region above and something else below, that a loop has passed: each
	 * loop has some, and it passes them to the left. One byte a cell of the region's bounding
	 * box; NULL: a region without holes needs no marks. */
	char *passed;
};

static size_t region_width(const struct region *r)
{
	return (size_t)(r->most.x - r->left + 1);
}

static char *passed_at(const struct trace *trace, int x, int y)
{
	const struct region *r = trace->region;

	return trace->passed + (size_t)(y - r->first_cell.y) * region_width(r) +
		(size_t)(x - r->left);
}

static void mark_passed(const struct trace *trace, const struct walker *from, int64_t length)
{
	if (trace->passed && from->heading == LEFT)
		for (int64_t i = 1; i <= length; i++)
			*passed_at(trace, from->x - (int)i, from->y - 1) = 1;
}

/* Walks round one loop from a corner of it. */
static struct loop trace_loop(const struct trace *trace, struct walker start)
{
	struct loop loop = { NULL, 0, 0 };
	struct corner *corners = NULL;
	struct walker w = start;
	size_t count = 0, capacity = 0;

	do {
		struct walker from = w;
		int64_t length = walk_side(&w, trace->ground, trace->letter);

		mark_passed(trace, &from, length);
		corners = arena_grow(trace->arena, corners, count, &capacity, sizeof *corners);
		corners[count++] = (struct corner){ from.x, from.y, from.reflex };
		loop.perimeter += length;
	} while ((w.x != start.x || w.y != start.y || w.heading != start.heading) && !stop_asked());
	corners[0].reflex = w.reflex;
	loop.corners = corners;
	loop.count = (int)count;
	return loop;
}

/* The next hole in reading order that no loop has passed, from the cell *above on: the cell above
 * its topmost, then leftmost, corner. */
static bool find_hole(const struct trace *trace, const struct survey *survey, int region,
	struct place *above)
{
	for (; above->y < trace->region->most.y && !stop_asked();
		 above->y++, above->x = trace->region->left) {
		size_t end = survey->row_runs[above->y + 1];

		for (size_t i = survey_run_at(survey, above->x, above->y); i < end; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = most(run->left, above->x);
				run->region == region && x < run->right; x++) {
				if (is_own(trace->ground, trace->letter, x, above->y + 1) ||
					*passed_at(trace, x, above->y))
					continue;
				above->x = x;
				return true;
			}
		}
	}
	return false;
}

void outline_trace(struct outline *out, struct arena *arena, const struct plot *plot,
	const struct survey *survey, int region)
{
	const struct region *r = &survey->regions[region];
	int holes = region_holes(r);
	struct loop *loops = arena_new(arena, (size_t)holes + 1, sizeof *loops);
	struct trace trace = { arena, &plot->ground, r, r->entry->letter, NULL };
	struct place above = { r->left, r->first_cell.y };

	if (holes > 0)
		trace.passed = memory_new((size_t)(r->most.y - r->first_cell.y + 1),
			region_width(r));
	loops[0] = trace_loop(&trace,
		(struct walker){ r->first_cell.x, r->first_cell.y, RIGHT, false });
	for (int i = 1; i <= holes; i++) {
		bool is_there = find_hole(&trace, survey, region, &above);

		if (stop_asked())
			break;
		assert(is_there); /* the survey has counted them */
		(void)is_there;
		loops[i] = trace_loop(&trace, (struct walker){ above.x, above.y + 1, DOWN, true });
	}
	free(trace.passed);
	*out = (struct outline){ loops, holes + 1 };
}

struct cover_box outline_strip_box(const struct survey *survey, const struct loop *loop, int side,
	const struct outline_strip *strip)
{
	const struct corner *a = &loop->corners[side], *b =
		&loop->corners[(side + 1) % loop->count];
	int dx = sign(b->x - a->x), dy = sign(b->y - a->y);
	nm x1 = a->x * survey->cell, y1 = a->y * survey->cell;
	/* With y down the right hand of (dx, dy) is (-dy, dx). */
	nm x2 = b->x * survey->cell + dx * strip->past - dy * strip->depth;
	nm y2 = b->y * survey->cell + dy * strip->past + dx * strip->depth;

	return (struct cover_box){ nm_least(x1, x2), nm_least(y1, y2), nm_most(x1, x2),
		nm_most(y1, y2), 0 };
}

int64_t outline_side(const struct loop *loop, int side)
{
	const struct corner *a = &loop->corners[side];
	const struct corner *b = &loop->corners[(side + 1) % loop->count];

	return labs(b->x - a->x) + labs(b->y - a->y);
}

/* The square that ends at a cell is one larger than the least of those beside, above and across. */
static void extend_square(uint16_t *side, size_t width)
{
	const uint16_t *above = side - width;

	*side = (uint16_t)(least(side[-1], least(above[0], above[-1])) + 1);
}

/* Sides of the largest squares of the region, by their bottom right cells, over its bounding
 * box. */
static uint16_t *largest_squares(const struct survey *survey, int region)
{
	const struct region *r = &survey->regions[region];
	size_t width = region_width(r) + 1; /* one column of zeros at the left */
	size_t height = (size_t)(r->most.y - r->first_cell.y + 2); /* and a row on top */
	uint16_t *sides = memory_new(width * height, sizeof *sides);

	for (int y = r->first_cell.y; y <= r->most.y && !stop_asked(); y++) {
		uint16_t *row = sides + (size_t)(y - r->first_cell.y + 1) * width + 1;
		size_t end = survey->row_runs[y + 1];

		for (size_t i = survey_run_at(survey, r->left, y); i < end; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; run->region == region && x < run->right; x++)
				extend_square(row + (x - r->left), width);
		}
	}
	return sides;
}

bool outline_is_wide(const struct survey *survey, int region, int side, struct place *narrow)
{
	const struct region *r = &survey->regions[region];
	int width = r->most.x - r->left + 1, height = r->most.y - r->first_cell.y + 1;
	uint16_t *sides = largest_squares(survey, region);
	int *rows_left = memory_new((size_t)width, sizeof *rows_left);
	bool is_wide = true;

	/* From the bottom right corner on, each square of that side covers the cells to the left
	 * of its last one and above it. */
	for (int y = height; y >= 1 && !stop_asked(); y--) {
		const uint16_t *row = sides + (size_t)y * (size_t)(width + 1) + 1;
		int columns_left = 0;

		for (int x = width - 1; x >= 0; x--) {
			if (row[x] >= side)
				columns_left = side;
			if (columns_left > 0)
				rows_left[x] = side;
			if (row[x] && rows_left[x] <= 0) {
				is_wide = false;
				*narrow = (struct place){ r->left + x, r->first_cell.y + y - 1 };
			}
			columns_left--;
			rows_left[x]--;
		}
	}
	free(rows_left);
	free(sides);
	return is_wide;
}
