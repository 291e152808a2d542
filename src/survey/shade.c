#include "survey/shade.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "survey/tally.h"

#include <math.h>

enum { AT_ONCE = 4 }; /* rows that are drawn by a loop which compilers unroll */

#define RADIANS (3.14159265358979323846 / 180)

/* An occluder as a layer sees it, in cells: how high above its middles it is. */
struct box {
	double left, top, right, bottom, height;
	/* It stands on no cells of the layer, and no shadow that goes less far to a side than this
	 * comes to any. */
	bool is_beside;
	double to_left, to_top, to_right, to_bottom;
	/* No shadow that goes less far right and down, for each cell of height, comes to a cell. */
	double reach;
};

/* The cells of one level. */
struct layer {
	int left, top, right, bottom; /* the rectangle around them, the last two exclusive */
	uint64_t *set;
	struct box *boxes; /* what casts shade on them, by reach */
	size_t box_count;
};

struct shade {
	int columns, rows;
	size_t words; /* of a set of cells */
	struct layer *layers;
	int layer_count;
	struct tally tally;      /* of sets of cells, each those in the shade of a ray */
};

struct ray ray_from(double height, double azimuth, double north)
{
	double turned = (azimuth - north) * RADIANS;

	return (struct ray){ sin(turned), -cos(turned), tan(height * RADIANS) };
}

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
	return (int)greater(first, lesser(last, line + 0.5));
}

/* Words of a set, 64 cells side by side, lie one below the other, then those to their right: so
 * shadows, which go on over many rows, are drawn along memory. */
static size_t word_at(const struct shade *shade, int x, int y)
{
	return (size_t)x / WORD_BITS * (size_t)shade->rows + (size_t)y;
}

/* Cells of a row, at least one: all bits of the words between the first and the last one, of these
 * two those in `from` and `to`. */
struct span {
	size_t first, last;
	uint64_t from, to;
};

static struct span span_of(int left, int right)
{
	struct span span = { (size_t)left / WORD_BITS, (size_t)(right - 1) / WORD_BITS,
		~UINT64_C(0) << left % WORD_BITS,
		~UINT64_C(0) >> (WORD_BITS - 1 - (right - 1) % WORD_BITS) };

	if (span.first == span.last)
		span.from = span.to = span.from & span.to;
	return span;
}

/* ---- A scene made ready ---------------------------------------------------------------------- */

static bool stands_on(const struct shade *shade, const struct layer *layer, const struct box *box)
{
	int left = middles(box->left, layer->left, layer->right);
	int right = middles(box->right, layer->left, layer->right);
	int top = middles(box->top, layer->top, layer->bottom);
	int bottom = middles(box->bottom, layer->top, layer->bottom);
	struct span span;
	uint64_t met = 0;

	if (left >= right)
		return false;
	span = span_of(left, right);
	for (int y = top; y < bottom && !met; y++) {
		const uint64_t *set = layer->set + y;
		size_t rows = (size_t)shade->rows;

		met = (set[span.first * rows] & span.from) | (set[span.last * rows] & span.to);
		for (size_t i = span.first + 1; i < span.last; i++)
			met |= set[i * rows];
	}
	return met != 0;
}

/* A hair less than all that such a shadow must go, so that rounding does not decide. */
static double reach_of(const struct box *box)
{
	double across = lesser(box->to_left, box->to_right);
	double down = lesser(box->to_top, box->to_bottom);

	return box->is_beside ? lesser(across, down) / box->height * (1 - 1e-9) : 0;
}

/* As sort wants it: what comes to cells first is before. */
static int by_reach(const void *a, const void *b)
{
	double one = ((const struct box *)a)->reach, other = ((const struct box *)b)->reach;

	return (one > other) - (one < other);
}

/* How far it is from a line to the next middle after it. */
static double to_middle(double line)
{
	return floor(line + 0.5) + 0.5 - line;
}

static struct box box_of(const struct shade *shade, const struct layer *layer,
	const struct occluder *from, const struct shade_scene *scene, nm height)
{
	double cell = (double)scene->cell;
	struct box box = { .left = (double)from->left / cell, .top = (double)from->top / cell,
		.right = (double)from->right / cell, .bottom = (double)from->bottom / cell,
		.height = (double)(from->height - height) / cell };

	box.is_beside = !stands_on(shade, layer, &box);
	box.to_left = to_middle(-box.left);
	box.to_top = to_middle(-box.top);
	box.to_right = to_middle(box.right);
	box.to_bottom = to_middle(box.bottom);
	box.reach = reach_of(&box);
	return box;
}

static bool is_for(const struct occluder *occluder, const struct shade_scene *scene, int level)
{
	bool is_level = occluder->level == level;

	return occluder->height > scene->heights[level] && (occluder->casting == CAST_ON_ALL ||
		is_level == (occluder->casting == CAST_ON_LEVEL));
}

static void boxes_add(struct shade *shade, struct arena *arena, const struct shade_scene *scene,
	int level)
{
	struct layer *layer = &shade->layers[level];
	size_t capacity = 0;

	for (size_t i = 0; i < scene->occluder_count && !stop_asked(); i++) {
		const struct occluder *from = &scene->occluders[i];

		if (!is_for(from, scene, level))
			continue;
		layer->boxes = arena_grow(arena, layer->boxes, layer->box_count, &capacity,
			sizeof *layer->boxes);
		layer->boxes[layer->box_count++] = box_of(shade, layer, from, scene,
			scene->heights[level]);
	}
	if (!stop_asked())
		sort(layer->boxes, layer->box_count, sizeof *layer->boxes, by_reach);
}

static void layer_add(struct layer *layer, const struct shade *shade, int x, int y)
{
	layer->set[word_at(shade, x, y)] |= UINT64_C(1) << x % WORD_BITS;
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
	shade->words = word_at(shade, scene->columns - 1, scene->rows - 1) + 1;
	tally_init(&shade->tally, arena, shade->words);
	layers_make(shade, arena, scene);
	for (int i = 0; i < shade->layer_count; i++)
		if (shade->layers[i].top < shade->layers[i].bottom)
			boxes_add(shade, arena, scene, i);
	return shade;
}

/* ---- The shade of one ray -------------------------------------------------------------------- */

/* How shadows fall on a layer: so many cells right and down for each cell of a box's height. */
struct fall {
	const struct layer *layer;
	double right, down;
	uint64_t *shaded;
	size_t rows;
};

/* The cells of a mask in rows top..bottom-1 of a column of words. */
static void word_shade(const struct fall *fall, size_t word, uint64_t mask, int top, int bottom)
{
	size_t at = word * fall->rows, first = at + (size_t)top, end = at + (size_t)bottom;
	const uint64_t *restrict set = fall->layer->set;
	uint64_t *restrict shaded = fall->shaded;

	for (; first + AT_ONCE <= end; first += AT_ONCE)
		for (size_t i = 0; i < AT_ONCE; i++)
			shaded[first + i] |= set[first + i] & mask;
	for (; first < end; first++)
		shaded[first] |= set[first] & mask;
}

/* Cells left..right-1 of rows top..bottom-1 are in the shade, as far as they are of the layer. */
static void cells_shade(const struct fall *fall, int left, int top, int right, int bottom)
{
	struct span span = span_of(left, right);

	word_shade(fall, span.first, span.from, top, bottom);
	for (size_t word = span.first + 1; word < span.last; word++)
		word_shade(fall, word, ~UINT64_C(0), top, bottom);
	if (span.first < span.last)
		word_shade(fall, span.last, span.to, top, bottom);
}

/* The same of one row. */
static void row_shade(const struct fall *fall, int left, int right, int y)
{
	struct span span = span_of(left, right);
	size_t rows = fall->rows, at = span.first * rows + (size_t)y;
	const uint64_t *set = fall->layer->set;
	uint64_t *shaded = fall->shaded;

	shaded[at] |= set[at] & span.from;
	if (span.first == span.last)
		return;
	for (size_t word = span.first + 1; word < span.last; word++) {
		at += rows;
		shaded[at] |= set[at];
	}
	at += rows;
	shaded[at] |= set[at] & span.to;
}

/* A box drawn along its shadow. */
struct drawn {
	const struct box *box;
	double right, down; /* how far the shadow goes */
	int left, end;      /* its columns, the last exclusive */
};

/* Rows that the box comes to or leaves on its way: it is over their middles from where its one side
 * comes to them until its other side leaves them; what of that is before it begins, or after it
 * ends, lies beyond the columns. */
static void rows_cast(const struct fall *fall, const struct drawn *drawn, int top, int bottom)
{
	const struct box *box = drawn->box;
	double along = drawn->right / drawn->down;
	double far = along > 0 ? box->bottom : box->top, near = along > 0 ? box->top : box->bottom;

	for (int y = top; y < bottom; y++) {
		int first = middles(box->left + (y + 0.5 - far) * along, drawn->left, drawn->end);
		int last = middles(box->right + (y + 0.5 - near) * along, drawn->left, drawn->end);

		if (first < last)
			row_shade(fall, first, last, y);
	}
}

/* Rows over which it is all the way, among those that it stands on. */
static void middle_cast(const struct fall *fall, const struct drawn *drawn, int top, int bottom)
{
	int left = drawn->left, end = drawn->end;

	if (drawn->box->is_beside && drawn->right < 0)
		end = middles(drawn->box->left, left, end);
	else if (drawn->box->is_beside)
		left = middles(drawn->box->right, left, end);
	if (left < end)
		cells_shade(fall, left, top, end, bottom);
}

static void box_cast(const struct fall *fall, const struct box *box)
{
	const struct layer *layer = fall->layer;
	double right = fall->right * box->height, down = fall->down * box->height;
	struct drawn drawn = { .box = box, .right = right, .down = down };
	int from, to, top, bottom;

	if (box->is_beside && -box->to_left < right && right < box->to_right &&
		-box->to_top < down && down < box->to_bottom)
		return;
	top = middles(box->top + lesser(down, 0), layer->top, layer->bottom);
	bottom = middles(box->bottom + greater(down, 0), layer->top, layer->bottom);
	if (top >= bottom)
		return;
	drawn.left = middles(box->left + lesser(right, 0), layer->left, layer->right);
	drawn.end = middles(box->right + greater(right, 0), layer->left, layer->right);
	if (drawn.left >= drawn.end)
		return;
	from = middles(box->top + greater(down, 0), top, bottom);
	to = middles(box->bottom + lesser(down, 0), from, bottom);
	rows_cast(fall, &drawn, top, from);
	middle_cast(fall, &drawn, from, to);
	rows_cast(fall, &drawn, to, bottom);
}

static void layer_cast(const struct shade *shade, const struct layer *layer, const struct ray *ray)
{
	const struct fall fall = { layer, -ray->right / ray->rise, -ray->down / ray->rise,
		shade->tally.set, (size_t)shade->rows };
	double furthest = greater(fabs(fall.right), fabs(fall.down));

	for (size_t i = 0; i < layer->box_count && layer->boxes[i].reach <= furthest &&
		!stop_asked(); i++)
		box_cast(&fall, &layer->boxes[i]);
}

void shade_count(struct shade *shade, const struct ray *rays, int count, uint16_t *lit)
{
	uint16_t shaded[WORD_BITS];

	tally_clear(&shade->tally);
	for (int i = 0; i < count && !stop_asked(); i++) {
		for (int j = 0; j < shade->layer_count; j++)
			layer_cast(shade, &shade->layers[j], &rays[i]);
		tally_add(&shade->tally);
	}
	tally_end(&shade->tally);
	for (int y = 0; y < shade->rows && !stop_asked(); y++) {
		for (int left = 0; left < shade->columns; left += WORD_BITS) {
			int here = least(WORD_BITS, shade->columns - left);

			tally_counts(&shade->tally, word_at(shade, left, y), shaded);
			for (int i = 0; i < here; i++)
				lit[i] = (uint16_t)(count - shaded[i]);
			lit += here;
		}
	}
}
