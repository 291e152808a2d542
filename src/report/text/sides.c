#include "report/text/sides.h"
#include "base/hash.h"
#include "base/number.h"

/* A cap's strip is drawn at a scale of its own where of block and cap one is over so many times as
 * long as the other. */
enum { LENGTHS_MOST = 3 };

const char *const course_names[COURSE_KINDS] = { "odd", "even", "cap" };

const struct wall_course *course_of(const struct wall *wall, enum course_kind kind)
{
	return kind == COURSE_ODD ? &wall->odd : kind == COURSE_EVEN ? &wall->even : &wall->cap;
}

int courses_of(const struct wall *wall, enum course_kind kind)
{
	if (kind == COURSE_CAP)
		return wall->has_cap;
	return (wall->courses + (kind == COURSE_ODD)) / 2;
}

enum block_use course_use(enum course_kind kind)
{
	return kind == COURSE_CAP ? USE_CAP : USE_WALL;
}

static const struct size *block_of(const struct wall *wall, enum course_kind kind)
{
	return kind == COURSE_CAP ? &wall->cap_block : &wall->block;
}

/* ---- Runs ------------------------------------------------------------------------------------ */

/* Whether a run goes through a corner, by how far it reaches past it: see ring.h. */
static bool is_through(bool is_reflex, nm past)
{
	return is_reflex ? past > 0 : past == 0;
}

struct strip sides_strip(const struct wall_sides *sides, int side, enum course_kind kind)
{
	const struct wall_course *course = course_of(sides->wall, kind);
	const struct wall_run *run = &course->runs[side];
	struct strip strip = { .count = 0 };

	if (course->run_count == 0)
		return strip;
	const struct loop *loop = &sides->outline->loops[run->loop];
	const struct corner *first = &loop->corners[run->side];
	const struct corner *last = &loop->corners[(run->side + 1) % loop->count];

	strip = (struct strip){ .side = outline_side(loop, run->side) * sides->cell,
		.from = run->from, .length = run->length, .pieces = run->pieces,
		.count = run->piece_count, .block = block_of(sides->wall, kind)->along };
	strip.through[0] = is_through(first->reflex, -run->from);
	strip.through[1] = is_through(last->reflex, run->from + run->length - strip.side);
	return strip;
}

struct strip_scale sides_scale(const struct wall_sides *sides, int side, enum course_kind kind)
{
	const struct wall *wall = sides->wall;
	nm block = wall->block.along, cap = wall->has_cap ? wall->cap_block.along : block;
	struct strip_scale scale = { 0, nm_least(block, cap) };

	if (nm_most(block, cap) > LENGTHS_MOST * scale.length)
		scale.length = block_of(wall, kind)->along;
	for (int i = 0; i < COURSE_KINDS; i++)
		scale.origin = nm_least(scale.origin, sides_strip(sides, side,
			(enum course_kind)i).from);
	return scale;
}

const char *sides_facing(const struct wall_sides *sides, int side)
{
	const struct wall_run *run = &sides->wall->odd.runs[side];
	const struct loop *loop = &sides->outline->loops[run->loop];
	const struct corner *from = &loop->corners[run->side];
	const struct corner *to = &loop->corners[(run->side + 1) % loop->count];

	/* The bed is on the right hand. */
	if (to->y == from->y)
		return to->x > from->x ? "up" : "down";
	return to->y > from->y ? "right" : "left";
}

/* ---- Alike ----------------------------------------------------------------------------------- */

static enum course_kind exchanged(enum course_kind kind, int way)
{
	if (!(way & LIKE_EXCHANGED) || kind == COURSE_CAP)
		return kind;
	return kind == COURSE_ODD ? COURSE_EVEN : COURSE_ODD;
}

/* Where it begins when it is seen from the side's other corner. */
static nm from_of(const struct strip *strip, bool is_back)
{
	return is_back ? strip->side - strip->from - strip->length : strip->from;
}

static nm piece_of(const struct strip *strip, int piece, bool is_back)
{
	return strip->pieces[is_back ? strip->count - 1 - piece : piece];
}

static bool are_strips_alike(const struct strip *a, const struct strip *b, bool is_back)
{
	if (a->side != b->side || a->length != b->length || a->count != b->count ||
	    a->from != from_of(b, is_back) || a->through[0] != b->through[is_back] ||
	    a->through[1] != b->through[!is_back])
		return false;
	for (int i = 0; i < a->count; i++)
		if (a->pieces[i] != piece_of(b, i, is_back))
			return false;
	return true;
}

static bool is_way(const struct wall_sides *sides, int side, int other, int way)
{
	for (int i = 0; i < COURSE_KINDS; i++) {
		enum course_kind kind = (enum course_kind)i;
		struct strip strip = sides_strip(sides, side, kind);
		struct strip like = sides_strip(sides, other, exchanged(kind, way));

		if (!are_strips_alike(&strip, &like, way & LIKE_BACK))
			return false;
	}
	return true;
}

int sides_way(const struct wall_sides *sides, int side, int other)
{
	int way = 0;

	while (way < LIKE_WAYS && !is_way(sides, side, other, way))
		way++;
	return way;
}

/* The items are the runs of the odd course. */
static int side_of(const struct wall_sides *sides, const void *run)
{
	return (int)((const struct wall_run *)run - sides->wall->odd.runs);
}

static bool are_alike(const void *a, const void *b, const void *context)
{
	return sides_way(context, side_of(context, a), side_of(context, b)) < LIKE_WAYS;
}

/* Of its ends: runs that are alike there and not in between are few. */
static uint64_t hash_strip(uint64_t hash, const struct strip *strip, bool is_back)
{
	const nm ends[] = { strip->side, strip->length, strip->count, from_of(strip, is_back),
		strip->count > 0 ? piece_of(strip, 0, is_back) : 0 };

	return hash_bytes(hash, ends, sizeof ends);
}

/* Of all ways together, so that it is the same of sides that are alike in any. */
static uint64_t hash_side(const void *item, const void *context)
{
	const struct wall_sides *sides = context;
	uint64_t all = 0;

	for (int way = 0; way < LIKE_WAYS; way++) {
		uint64_t hash = HASH_EMPTY;

		for (int i = 0; i < COURSE_KINDS; i++) {
			struct strip strip = sides_strip(sides, side_of(sides, item),
				exchanged((enum course_kind)i, way));

			hash = hash_strip(hash, &strip, way & LIKE_BACK);
		}
		all += hash;
	}
	return all;
}

struct groups sides_alike(const struct wall_sides *sides)
{
	const struct wall_course *odd = &sides->wall->odd;

	return groups_make(odd->runs, odd->run_count, sizeof *odd->runs,
		&(struct alike){ are_alike, hash_side, sides });
}
