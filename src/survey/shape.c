#include "survey/shape.h"
#include "base/hash.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/image.h"

static struct place size_of(const struct region *r)
{
	return (struct place){ r->most.x - r->left + 1, r->most.y - r->first_cell.y + 1 };
}

/* Most regions are rectangles: of these the size says all. */
static bool is_rectangle(const struct region *region)
{
	struct place size = size_of(region);

	return region->cells == size.x * size.y;
}

/* From the upper left corner of its bounding box. */
static struct place corner_at(const struct region *region, const struct corner *corner)
{
	return (struct place){ corner->x - region->left, corner->y - region->first_cell.y };
}

static uint64_t hash_loop(uint64_t before, const struct region *region, const struct loop *loop)
{
	before = hash_bytes(before, &loop->count, sizeof loop->count);
	for (int i = 0; i < loop->count; i++) {
		struct place at = corner_at(region, &loop->corners[i]);

		before = hash_bytes(before, &at, sizeof at);
	}
	return before;
}

uint64_t shape_hash(const struct plot *plot, const struct survey *survey, int region)
{
	const struct region *r = &survey->regions[region];
	struct place size = size_of(r);
	uint64_t hash = hash_bytes(HASH_EMPTY, &size, sizeof size);
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	if (is_rectangle(r))
		return hash;
	outline_trace(&outline, &arena, plot, survey, region);
	for (int i = 0; i < outline.count; i++)
		hash = hash_loop(hash, r, &outline.loops[i]);
	arena_clear(&arena);
	return hash;
}

static bool is_equal_loop(const struct region *a, const struct loop *of_a, const struct region *b,
	const struct loop *of_b)
{
	if (of_a->count != of_b->count)
		return false;
	for (int i = 0; i < of_a->count; i++)
		if (!place_equal(corner_at(a, &of_a->corners[i]),
			corner_at(b, &of_b->corners[i])))
			return false;
	return true;
}

static bool is_equal_outline(const struct region *a, const struct outline *of_a,
	const struct region *b, const struct outline *of_b)
{
	for (int i = 0; i < of_a->count; i++)
		if (!is_equal_loop(a, &of_a->loops[i], b, &of_b->loops[i]))
			return false;
	return true;
}

bool shape_is_equal(const struct plot *plot, const struct survey *survey, int a, int b)
{
	const struct region *one = &survey->regions[a], *other = &survey->regions[b];
	struct arena arena = ARENA_EMPTY;
	struct outline of_one, of_other;
	bool is_equal;

	if (!place_equal(size_of(one), size_of(other)) || one->cells != other->cells ||
		region_holes(one) != region_holes(other))
		return false;
	if (is_rectangle(one))
		return true;
	outline_trace(&of_one, &arena, plot, survey, a);
	outline_trace(&of_other, &arena, plot, survey, b);
	is_equal = is_equal_outline(one, &of_one, other, &of_other);
	arena_clear(&arena);
	return is_equal;
}

/* ---- Images ---------------------------------------------------------------------------------- */

/* The lesser and the greater of two: the same when they change places. */
static struct place in_order(int a, int b)
{
	return (struct place){ least(a, b), most(a, b) };
}

/* How far a corner is from the nearer sides of the box: all its images are as far. */
static struct place depth_of(const struct region *region, const struct corner *corner)
{
	struct place at = corner_at(region, corner), size = size_of(region);

	return in_order(least(at.x, size.x - at.x), least(at.y, size.y - at.y));
}

uint64_t shape_image_hash(const struct plot *plot, const struct survey *survey, int region)
{
	const struct region *r = &survey->regions[region];
	struct place size = in_order(size_of(r).x, size_of(r).y);
	uint64_t hash = hash_bytes(HASH_EMPTY, &size, sizeof size), corners = 0;
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	if (is_rectangle(r))
		return hash;
	outline_trace(&outline, &arena, plot, survey, region);
	/* A sum, so that it does not matter where a loop starts and which way it goes. */
	for (int i = 0; i < outline.count; i++) {
		for (int j = 0; j < outline.loops[i].count; j++) {
			struct place depth = depth_of(r, &outline.loops[i].corners[j]);

			corners += hash_bytes(hash, &depth, sizeof depth);
		}
	}
	arena_clear(&arena);
	return hash_bytes(hash, &corners, sizeof corners);
}

static bool is_any_image(const struct outline *one, const struct outline *other,
	struct arena *arena)
{
	struct image image;

	for (int turn = 0; turn < TURNS && !stop_asked(); turn++)
		if (image_find(&image, arena, one, other, (enum turn)turn))
			return true;
	return false;
}

bool shape_is_image(const struct plot *plot, const struct survey *survey, int a, int b)
{
	const struct region *one = &survey->regions[a], *other = &survey->regions[b];
	struct place of_one = size_of(one), of_other = size_of(other);
	struct arena arena = ARENA_EMPTY;
	struct outline outlines[2];
	bool is_image;

	if (!place_equal(in_order(of_one.x, of_one.y), in_order(of_other.x, of_other.y)) ||
		one->cells != other->cells || region_holes(one) != region_holes(other))
		return false;
	if (is_rectangle(one))
		return true;
	outline_trace(&outlines[0], &arena, plot, survey, a);
	outline_trace(&outlines[1], &arena, plot, survey, b);
	is_image = is_any_image(&outlines[0], &outlines[1], &arena);
	arena_clear(&arena);
	return is_image;
}

/* ---- Groups ---------------------------------------------------------------------------------- */

struct surveyed {
	const struct plot *plot;
	const struct survey *survey;
};

static bool are_alike(const void *a, const void *b, const void *context)
{
	const struct surveyed *of = context;
	int one = *(const int *)a, other = *(const int *)b;

	return of->survey->regions[one].entry == of->survey->regions[other].entry &&
		shape_is_equal(of->plot, of->survey, one, other);
}

static uint64_t hash_region(const void *item, const void *context)
{
	const struct surveyed *of = context;
	int region = *(const int *)item;

	return hash_bytes(shape_hash(of->plot, of->survey, region),
		&of->survey->regions[region].entry->letter, 1);
}

struct groups shape_groups(const struct plot *plot, const struct survey *survey,
	const int *regions, int count)
{
	const struct surveyed context = { plot, survey };

	return groups_make(regions, count, sizeof *regions,
		&(struct alike){ are_alike, hash_region, &context });
}

static bool are_images(const void *a, const void *b, const void *context)
{
	const struct surveyed *of = context;
	const struct shaped *one = a, *other = b;

	return one->kind == other->kind &&
		shape_is_image(of->plot, of->survey, one->region, other->region);
}

static uint64_t hash_image(const void *item, const void *context)
{
	const struct surveyed *of = context;
	const struct shaped *shaped = item;

	return hash_bytes(shape_image_hash(of->plot, of->survey, shaped->region), &shaped->kind,
		sizeof shaped->kind);
}

struct groups shape_images(const struct plot *plot, const struct survey *survey,
	const struct shaped *regions, int count)
{
	const struct surveyed context = { plot, survey };

	return groups_make(regions, count, sizeof *regions,
		&(struct alike){ are_images, hash_image, &context });
}
