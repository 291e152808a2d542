#include "plot/edit/lay.h"
#include "base/memory.h"
#include "base/number.h"

#include <stdlib.h>
#include <string.h>

bool rectangle_holds(struct rectangle r, struct place at)
{
	return at.x >= r.left && at.x <= r.right && at.y >= r.top && at.y <= r.bottom;
}

struct rectangle rectangle_around(struct rectangle a, struct rectangle b)
{
	return (struct rectangle){ least(a.left, b.left), least(a.top, b.top),
		most(a.right, b.right), most(a.bottom, b.bottom) };
}

struct rectangle rectangle_between(int x0, int y0, int x1, int y1)
{
	return (struct rectangle){ least(x0, x1), least(y0, y1), most(x0, x1), most(y0, y1) };
}

/* How many of `width` cells beside each other lie before the one that they are centred on. */
static int before(int width, bool is_before)
{
	return (is_before ? width : width - 1) / 2;
}

struct rectangle rectangle_run(struct place from, struct place to, int width)
{
	bool is_level = abs(to.x - from.x) >= abs(to.y - from.y);
	int left = from.x - before(width, to.x < from.x),
		top = from.y - before(width, to.y < from.y);

	if (is_level)
		return (struct rectangle){ least(from.x, to.x), top, most(from.x, to.x),
			top + width - 1 };
	return (struct rectangle){ left, least(from.y, to.y), left + width - 1,
		most(from.y, to.y) };
}

struct rectangle rectangle_run_mirrored(const struct mirror *mirror, struct place from,
	struct place to, int width)
{
	bool is_level = abs(to.x - from.x) >= abs(to.y - from.y);
	int axis = mirror_axis(mirror, is_level), *low, *high;
	int cell = is_level ? from.y : from.x;
	struct rectangle r = rectangle_run(from, to, width);

	if (!mirror_has_axis(mirror, is_level) || abs(2 * cell + 1 - axis) > 1)
		return r;
	low = is_level ? &r.top : &r.left;
	high = is_level ? &r.bottom : &r.right;
	width += (axis + width) % 2;
	*low = (axis - width) / 2;
	*high = *low + width - 1;
	return r;
}

int rectangle_mirrored_width(const struct mirror *mirror, struct rectangle r, bool is_level)
{
	int low = is_level ? r.top : r.left, high = is_level ? r.bottom : r.right;
	int axis = mirror_axis(mirror, is_level);
	int image_low = axis - 1 - high, image_high = axis - 1 - low;

	if (!mirror_has_axis(mirror, is_level) || image_low > high + 1 || low > image_high + 1 ||
		(mirror->kind == MIRROR_HALF_TURN && low != image_low))
		return high - low + 1;
	return most(high, image_high) - least(low, image_low) + 1;
}

static int64_t rectangle_cells(struct rectangle r)
{
	if (r.right < r.left || r.bottom < r.top)
		return 0;
	return (int64_t)(r.right - r.left + 1) * (r.bottom - r.top + 1);
}

struct rectangle rectangle_within(struct rectangle r, const struct ground *ground)
{
	return (struct rectangle){ most(r.left, 0), most(r.top, 0),
		least(r.right, ground->columns - 1), least(r.bottom, ground->rows - 1) };
}

/* Lays the part of r that is inside the plan, without images. */
static void fill(struct ground *ground, struct rectangle r, char letter, struct laid *laid)
{
	struct rectangle in = rectangle_within(r, ground);

	laid->outside = laid->outside || rectangle_cells(in) < rectangle_cells(r);
	if (rectangle_cells(in) == 0)
		return;
	for (int y = in.top; y <= in.bottom; y++) {
		char *row = ground_at(ground, in.left, y);
		size_t width = (size_t)(in.right - in.left + 1);

		for (size_t i = 0; i < width; i++)
			laid->changed += row[i] != letter;
		memset(row, letter, width);
	}
}

void lay_piece(struct plot *plot, const struct mirror *mirror, struct rectangle r,
	char letter, struct laid *laid)
{
	struct rectangle images[IMAGES_MOST];
	int count = mirror_rectangles(mirror, r, images);

	for (int i = 0; i < count; i++)
		fill(&plot->ground, images[i], letter, laid);
}

void lay_cell(struct plot *plot, const struct mirror *mirror, struct place at, char letter,
	struct laid *laid)
{
	lay_piece(plot, mirror, (struct rectangle){ at.x, at.y, at.x, at.y }, letter, laid);
}

struct laid lay_rectangle(struct plot *plot, struct rectangle r, char letter)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };

	lay_piece(plot, &mirror, r, letter, &laid);
	return laid;
}

struct laid lay_frame(struct plot *plot, struct rectangle r, int thickness, char letter)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };
	const struct rectangle within = { r.left + thickness, r.top + thickness,
		r.right - thickness, r.bottom - thickness };
	const struct rectangle sides[] = {
		{ r.left, r.top, r.right, within.top - 1 },
		{ r.left, within.bottom + 1, r.right, r.bottom },
		{ r.left, within.top, within.left - 1, within.bottom },
		{ within.right + 1, within.top, r.right, within.bottom },
	};

	if (rectangle_cells(within) == 0)
		return lay_rectangle(plot, r, letter);
	for (size_t i = 0; i < sizeof sides / sizeof *sides; i++)
		lay_piece(plot, &mirror, sides[i], letter, &laid);
	return laid;
}

/* Pieces of rows waiting to be spread from, for a flood. */
struct seeds {
	struct place *places;
	size_t count, capacity;
};

static void seed_add(struct seeds *seeds, int x, int y)
{
	seeds->places = memory_grow(seeds->places, seeds->count, &seeds->capacity,
		sizeof *seeds->places);
	seeds->places[seeds->count++] = (struct place){ x, y };
}

/* Adds a seed for every stretch of `from` letters over and under a row of the patch. */
static void seed_beside(struct seeds *seeds, struct ground *ground, struct rectangle row, char from)
{
	for (int y = row.top - 1; y <= row.top + 1; y += 2)
		for (int x = row.left; y >= 0 && y < ground->rows && x <= row.right; x++)
			if (*ground_at(ground, x, y) == from &&
				(x == row.left || *ground_at(ground, x - 1, y) != from))
				seed_add(seeds, x, y);
}

/* The patch's rows are first marked in the ground itself, with a byte that is no letter, and
 * kept as rectangles one cell high; then patch and images are laid. So an image that meets the
 * patch does not change what the patch is. */
struct rectangle *lay_patch(struct ground *ground, struct place at, size_t *count)
{
	struct seeds seeds = { NULL, 0, 0 };
	struct rectangle *rows = NULL;
	size_t capacity = 0;
	char from = *ground_at(ground, at.x, at.y);

	*count = 0;
	seed_add(&seeds, at.x, at.y);
	while (seeds.count) {
		struct place seed = seeds.places[--seeds.count];
		struct rectangle row = { seed.x, seed.y, seed.x, seed.y };

		if (*ground_at(ground, seed.x, seed.y) != from)
			continue;
		while (row.left > 0 && *ground_at(ground, row.left - 1, row.top) == from)
			row.left--;
		while (row.right < ground->columns - 1 &&
			*ground_at(ground, row.right + 1, row.top) == from)
			row.right++;
		memset(ground_at(ground, row.left, row.top), '\0',
			(size_t)(row.right - row.left + 1));
		rows = memory_grow(rows, *count, &capacity, sizeof *rows);
		rows[(*count)++] = row;
		seed_beside(&seeds, ground, row, from);
	}
	free(seeds.places);
	for (size_t i = 0; i < *count; i++)
		memset(ground_at(ground, rows[i].left, rows[i].top), from,
			(size_t)(rows[i].right - rows[i].left + 1));
	return rows;
}

struct laid lay_flood(struct plot *plot, int x, int y, char letter)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };
	size_t count;
	struct rectangle *rows = lay_patch(&plot->ground, (struct place){ x, y }, &count);

	for (size_t i = 0; i < count; i++)
		lay_piece(plot, &mirror, rows[i], letter, &laid);
	free(rows);
	return laid;
}

struct laid lay_fold(struct plot *plot, int x, int y)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };

	for (int row = 0; row < plot->ground.rows; row++)
		for (int column = 0; column < plot->ground.columns; column++)
			if (mirror_is_beside(&mirror, (struct place){ x, y }, column, row))
				lay_cell(plot, &mirror, (struct place){ column, row },
					ground_cell(&plot->ground, column, row), &laid);
	return laid;
}
