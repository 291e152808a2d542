#include "survey/shade.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/tally.h"

#include <math.h>
#include <string.h>

#define RADIANS (3.14159265358979323846 / 180)

/* An occluder as a layer sees it, in cells: how high above its middles it is. */
struct box {
	double left, top, right, bottom, height;
};

/* The cells of one level. */
struct layer {
	int left, top, right, bottom; /* the rectangle around them, the last two exclusive */
	uint64_t *set;
	struct box *boxes; /* what casts shade on them */
	size_t box_count;
};

struct shade {
	int columns, rows;
	size_t row_words, words; /* of a row of a set of cells; of a set */
	struct layer *layers;
	int layer_count;
	uint64_t *shaded;        /* of one ray: cells in the shade */
	uint64_t *cast;          /* the same for cells of any height, as if all were at one */
	struct tally tally;
};

struct ray ray_from(double height, double azimuth, double north)
{
	double turned = (azimuth - north) * RADIANS;

	return (struct ray){ sin(turned), -cos(turned), tan(height * RADIANS) };
}

/* ---- A scene made ready ---------------------------------------------------------------------- */

static bool is_for(const struct occluder *occluder, const struct shade_scene *scene, int level)
{
	bool is_level = occluder->level == level;

	return occluder->height > scene->heights[level] && (occluder->casting == CAST_ON_ALL ||
		is_level == (occluder->casting == CAST_ON_LEVEL));
}

static void boxes_add(struct layer *layer, struct arena *arena, const struct shade_scene *scene,
	int level)
{
	double cell = (double)scene->cell;
	size_t capacity = 0;

	for (size_t i = 0; i < scene->occluder_count && !stop_asked(); i++) {
		const struct occluder *from = &scene->occluders[i];

		if (!is_for(from, scene, level))
			continue;
		layer->boxes = arena_grow(arena, layer->boxes, layer->box_count, &capacity,
			sizeof *layer->boxes);
		layer->boxes[layer->box_count++] = (struct box){ (double)from->left / cell,
			(double)from->top / cell, (double)from->right / cell,
			(double)from->bottom / cell,
			(double)(from->height - scene->heights[level]) / cell };
	}
}

static void layer_add(struct layer *layer, const struct shade *shade, int x, int y)
{
	layer->set[(size_t)y * shade->row_words + (size_t)x / WORD_BITS] |=
		UINT64_C(1) << x % WORD_BITS;
	layer->left = least(layer->left, x);
	layer->right = most(layer->right, x + 1);
	layer->top = least(layer->top, y);
	layer->bottom = y + 1;
}

static void layers_make(struct shade *shade, struct arena *arena, const struct shade_scene *scene)
{
	const uint16_t *levels = scene->levels;

	shade->layer_count = scene->level_count;
	shade->layers = arena_new(arena, (size_t)shade->layer_count, sizeof *shade->layers);
	for (int i = 0; i < shade->layer_count; i++) {
		struct layer *layer = &shade->layers[i];

		layer->set = arena_new(arena, shade->words, sizeof *layer->set);
		layer->left = shade->columns;
		layer->top = shade->rows;
		boxes_add(layer, arena, scene, i);
	}
	for (int y = 0; y < shade->rows && !stop_asked(); y++) {
		for (int x = 0; x < shade->columns; x++) {
			int level = levels ? *levels++ : 0;

			if (level != SHADE_NO_LEVEL)
				layer_add(&shade->layers[level], shade, x, y);
		}
	}
}

struct shade *shade_new(struct arena *arena, const struct shade_scene *scene)
{
	struct shade *shade = arena_new(arena, 1, sizeof *shade);

	shade->columns = scene->columns;
	shade->rows = scene->rows;
	shade->row_words = ((size_t)scene->columns + WORD_BITS - 1) / WORD_BITS;
	shade->words = shade->row_words * (size_t)scene->rows;
	shade->shaded = arena_new(arena, shade->words, sizeof *shade->shaded);
	shade->cast = arena_new(arena, shade->words, sizeof *shade->cast);
	tally_init(&shade->tally, arena, shade->words);
	layers_make(shade, arena, scene);
	return shade;
}

/* ---- The shade of one ray -------------------------------------------------------------------- */

/* How shadows fall on a layer: so many cells right and down for each cell of a box's height. */
struct fall {
	const struct layer *layer;
	double right, down;
	uint64_t *set; /* what is in the shade */
	size_t row_words;
};

/* As fmin and fmax, without their care for what is no number: these are called for every row. */
static double lesser(double a, double b)
{
	return a < b ? a : b;
}

static double greater(double a, double b)
{
	return a > b ? a : b;
}

/* How many middles of cells are left of, or above, a line, from a first cell up to a last one. */
static int middles(double line, int first, int last)
{
	return (int)(greater(first, lesser(last, line + 0.5)));
}

/* Sets cells left..right-1 of rows top..bottom-1. */
static void cells_fill(const struct fall *fall, int left, int top, int right, int bottom)
{
	size_t first = (size_t)left / WORD_BITS, last = (size_t)(right - 1) / WORD_BITS;
	uint64_t from = ~UINT64_C(0) << left % WORD_BITS;
	uint64_t to = ~UINT64_C(0) >> (WORD_BITS - 1 - (right - 1) % WORD_BITS);
	uint64_t *row = fall->set + (size_t)top * fall->row_words;

	if (first == last)
		from = to = from & to;
	for (int y = top; y < bottom; y++, row += fall->row_words) {
		row[first] |= from;
		for (size_t i = first + 1; i < last; i++)
			row[i] = ~UINT64_C(0);
		row[last] |= to;
	}
}

/* A box drawn along its shadow. */
struct drawn {
	const struct box *box;
	double right, down; /* how far the shadow goes */
	int left, end;      /* its columns, the last exclusive */
};

/* Rows that the box comes to or leaves on its way: it is over their middles between two places, a
 * and b to the right of where it stands; what of that is before it begins, or after it ends, lies
 * beyond the columns. */
static void rows_cast(const struct fall *fall, const struct drawn *drawn, int top, int bottom)
{
	const struct box *box = drawn->box;
	double along = drawn->right / drawn->down;

	for (int y = top; y < bottom; y++) {
		double a = (y + 0.5 - box->top) * along, b = (y + 0.5 - box->bottom) * along;
		int first = middles(box->left + lesser(a, b), drawn->left, drawn->end);
		int last = middles(box->right + greater(a, b), drawn->left, drawn->end);

		if (first < last)
			cells_fill(fall, first, y, last, y + 1);
	}
}

/* In between there may be rows over which it is all the way. */
static void box_cast(const struct fall *fall, const struct box *box)
{
	const struct layer *layer = fall->layer;
	double right = fall->right * box->height, down = fall->down * box->height;
	struct drawn drawn = { .box = box, .right = right, .down = down };
	int top = middles(box->top + lesser(down, 0), layer->top, layer->bottom);
	int bottom = middles(box->bottom + greater(down, 0), layer->top, layer->bottom);
	int from, to;

	if (top >= bottom)
		return;
	drawn.left = middles(box->left + lesser(right, 0), layer->left, layer->right);
	drawn.end = middles(box->right + greater(right, 0), layer->left, layer->right);
	if (drawn.left >= drawn.end)
		return;
	from = middles(box->top + greater(down, 0), top, bottom);
	to = middles(box->bottom + lesser(down, 0), from, bottom);
	rows_cast(fall, &drawn, top, from);
	cells_fill(fall, drawn.left, from, drawn.end, to);
	rows_cast(fall, &drawn, to, bottom);
}

static void layer_cast(struct shade *shade, const struct layer *layer, const struct ray *ray)
{
	const struct fall fall = { layer, -ray->right / ray->rise, -ray->down / ray->rise,
		shade->cast, shade->row_words };
	size_t from = (size_t)layer->top * shade->row_words;
	size_t to = (size_t)layer->bottom * shade->row_words;

	if (from >= to || layer->box_count == 0)
		return;
	memset(shade->cast + from, 0, (to - from) * sizeof *shade->cast);
	for (size_t i = 0; i < layer->box_count && !stop_asked(); i++)
		box_cast(&fall, &layer->boxes[i]);
	for (size_t i = from; i < to; i++)
		shade->shaded[i] |= shade->cast[i] & layer->set[i];
}

void shade_count(struct shade *shade, const struct ray *rays, int count, uint16_t *lit)
{
	uint16_t shaded[WORD_BITS];

	tally_clear(&shade->tally);
	for (int i = 0; i < count && !stop_asked(); i++) {
		memset(shade->shaded, 0, shade->words * sizeof *shade->shaded);
		for (int j = 0; j < shade->layer_count; j++)
			layer_cast(shade, &shade->layers[j], &rays[i]);
		tally_add(&shade->tally, shade->shaded);
	}
	tally_end(&shade->tally);
	for (int y = 0; y < shade->rows && !stop_asked(); y++) {
		for (int x = 0; x < shade->columns; x++) {
			if (x % WORD_BITS == 0)
				tally_counts(&shade->tally, (size_t)y * shade->row_words +
					(size_t)x / WORD_BITS, shaded);
			*lit++ = (uint16_t)(count - shaded[x % WORD_BITS]);
		}
	}
}
