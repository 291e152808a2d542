#include "support/shapes.h"
#include "base/memory.h"
#include "base/number.h"
#include "plot/format/format.h"
#include "support/plots.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Open ground; each of the letters has an entry. */
static void start(struct plot *plot, int size, const char *letters)
{
	plot_from_rows(plot, (const char *const[]){ letters, NULL });
	ground_fini(&plot->ground);
	ground_init(&plot->ground, size, size);
}

/* What of the rectangle lies on the ground. */
static void fill(struct ground *ground, struct place from, struct place to, char letter)
{
	int right = least(to.x, ground->columns);

	for (int y = from.y; y < least(to.y, ground->rows); y++)
		for (int x = from.x; x < right; x++)
			*ground_at(ground, x, y) = letter;
}

static void fill_box(struct ground *ground, struct place at, int width, int height, char letter)
{
	fill(ground, at, (struct place){ at.x + width, at.y + height }, letter);
}

/* ---- What one might draw --------------------------------------------------------------------- */

enum { TILE = 128, HALF = TILE / 2 };

/* An elbow round the tile's middle, with lawn at its outer corner; mirrored by what asks. */
static char tile_letter(int x, int y)
{
	int right = TILE - 1 - x, bottom = TILE - 1 - y;

	x = least(x, right);
	y = least(y, bottom);
	if (x < 2 || y < 2 || x >= HALF - 2 || y >= HALF - 2)
		return x >= HALF - 2 && y >= HALF - 2 ? 'U' : 'p';
	if (x < 8 && y < 8)
		return 'l';
	return x >= HALF - 16 && y >= HALF - 16 ? 'p' : x < 24 || y < 24 ? 'b' : 'l';
}

void shape_formal(struct plot *plot, int size)
{
	start(plot, size, "bplU");
	plot_set(plot, 0, HEAD_MIRROR, "four-way");
	for (int y = 0; y < size; y++)
		for (int x = 0; x < size; x++)
			*ground_at(&plot->ground, x, y) = tile_letter(x % TILE, y % TILE);
}

void shape_long_beds(struct plot *plot, int size)
{
	start(plot, size, "b");
	for (int y = 0; y + 4 < size; y += 5)
		fill_box(&plot->ground, (struct place){ 0, y }, size - y / 5 % 100, 4, 'b');
}

void shape_small_beds(struct plot *plot, int size)
{
	enum { PITCH = 24, SIDE = 16 };

	start(plot, size, "b");
	for (int y = 0; y + SIDE < size; y += PITCH)
		for (int x = 0; x + SIDE < size; x += PITCH)
			fill_box(&plot->ground, (struct place){ x, y }, SIDE, SIDE / 2, 'b');
}

void shape_snags(struct plot *plot, int size)
{
	enum { WIDE = 12, HIGH = 12, STEP = 1 };

	start(plot, size, "b");
	plot_set(plot, 'b', BED_EMBED, "1 in");
	for (int y = 0; y + HIGH <= size; y += HIGH) {
		for (int x = 0; x + WIDE <= size; x += WIDE) {
			struct place at = { x, y };

			fill_box(&plot->ground, at, WIDE - 2, HIGH - 2, 'b');
			fill_box(&plot->ground, at, HIGH / 2, STEP, OPEN_GROUND);
		}
	}
}

/* ---- What nobody would ----------------------------------------------------------------------- */

void shape_noise(struct plot *plot, int size)
{
	static const char letters[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
	struct random random = { 1 };

	start(plot, size, letters);
	for (size_t i = 0; i < ground_count(&plot->ground); i++)
		plot->ground.cells[i] = letters[random_below(&random, sizeof letters - 1)];
}

static void by_turns(struct plot *plot, int size, const char letters[2])
{
	for (int y = 0; y < size; y++)
		for (int x = 0; x < size; x++)
			*ground_at(&plot->ground, x, y) = letters[(x + y) % 2];
}

void shape_checkerboard(struct plot *plot, int size)
{
	start(plot, size, "ab");
	by_turns(plot, size, "ab");
}

void shape_beds_and_paths(struct plot *plot, int size)
{
	start(plot, size, "bp");
	by_turns(plot, size, "bp");
}

enum { ARM = 4, TURN = 7 };

/* Rings within rings; each is cut below its upper left corner and led on to the next one there. */
static bool is_wound(int x, int y, int size)
{
	int inside = least(least(x, y), least(size - 1 - x, size - 1 - y));
	int below = y - inside / TURN * TURN;
	bool at_left = x == inside;

	if (inside % TURN < ARM)
		return !(at_left && below >= ARM && below < TURN);
	return at_left && below >= TURN && below < TURN + ARM;
}

void shape_spiral(struct plot *plot, int size)
{
	start(plot, size, "b");
	for (int y = 0; y < size; y++)
		for (int x = 0; x < size; x++)
			if (is_wound(x, y, size))
				*ground_at(&plot->ground, x, y) = 'b';
}

void shape_comb(struct plot *plot, int size)
{
	start(plot, size, "b");
	fill_box(&plot->ground, (struct place){ 0, 0 }, size, ARM, 'b');
	for (int x = 0; x + ARM <= size; x += 6)
		fill_box(&plot->ground, (struct place){ x, ARM }, ARM, size, 'b');
}

void shape_sieve(struct plot *plot, int size)
{
	start(plot, size, "b");
	for (int y = 0; y < size; y++)
		for (int x = 0; x < size; x++)
			if (x % 2 == 0 || y % 2 == 0)
				*ground_at(&plot->ground, x, y) = 'b';
}

void shape_fences(struct plot *plot, int size)
{
	enum { STAIRS = ROUTE_POINTS_MOST / 2, APART = 7 };
	struct fence *fence;

	start(plot, size, "b");
	fence = details_add_fence(&plot->details, memory_string("Stairs"));
	for (int y = 0; y + STAIRS <= size; y += STAIRS) {
		for (int x = 0; x + STAIRS <= size; x += APART) {
			struct route *run = fence_add_run(fence);

			for (int i = 0; i < STAIRS; i++) {
				route_add(run, (struct place){ x + i, y + i });
				route_add(run, (struct place){ x + i + 1, y + i });
			}
		}
	}
}

/* ---- By name --------------------------------------------------------------------------------- */

const struct shape shapes[] = {
	{ "formal", shape_formal },
	{ "long beds", shape_long_beds },
	{ "small beds", shape_small_beds },
	{ "snags", shape_snags },
	{ "noise", shape_noise },
	{ "checkerboard", shape_checkerboard },
	{ "beds and paths", shape_beds_and_paths },
	{ "spiral", shape_spiral },
	{ "comb", shape_comb },
	{ "sieve", shape_sieve },
	{ "fences", shape_fences },
};
const int shape_count = sizeof shapes / sizeof *shapes;

const struct shape *shape_named(const char *name)
{
	for (int i = 0; i < shape_count; i++)
		if (strcmp(shapes[i].name, name) == 0)
			return &shapes[i];
	return NULL;
}

void shape_write(const struct shape *shape, int size, const char *path)
{
	struct text text = TEXT_EMPTY;
	FILE *file = fopen(path, "w");
	struct plot plot;

	shape->draw(&plot, size);
	format_write(&plot, &text);
	plot_fini(&plot);
	if (!file || fwrite(text.bytes, 1, text.length, file) != text.length || fclose(file) != 0) {
		perror(path);
		abort();
	}
	text_fini(&text);
}
