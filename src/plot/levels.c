#include "plot/levels.h"
#include "base/memory.h"
#include "base/number.h"
#include "plot/leg.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

const char *const fall_words[] = { "towards", "away", NULL };

const struct value_rule step_rule = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
	.most = 1000 * NM_PER_M };
const struct value_rule drop_rule = { .kind = VALUE_LENGTH, .least = 0, .most = 10 * NM_PER_M };
const struct value_rule fall_rule = { .kind = VALUE_PERCENT, .least = 0, .most = 100 * MILLION };
const struct value_rule bearing_rule = { .kind = VALUE_DECIMAL, .least = 0,
	.most = 360 * MILLION - 1 };

int64_t levels_count(int cells, nm cell, nm step)
{
	return (cells * cell + step - 1) / step + 1;
}

static size_t count_of(const struct levels *levels)
{
	return (size_t)levels->columns * (size_t)levels->rows;
}

void levels_init(struct levels *levels, nm step, int columns, int rows)
{
	*levels = (struct levels){ step, columns, rows, NULL };
	levels->drops = memory_new(count_of(levels), sizeof *levels->drops);
}

void levels_fini(struct levels *levels)
{
	free(levels->drops);
	*levels = LEVELS_NONE;
}

struct levels levels_copy(const struct levels *levels)
{
	struct levels copy = LEVELS_NONE;

	if (levels->step) {
		levels_init(&copy, levels->step, levels->columns, levels->rows);
		memcpy(copy.drops, levels->drops, count_of(levels) * sizeof *copy.drops);
	}
	return copy;
}

bool levels_equal(const struct levels *a, const struct levels *b)
{
	return a->step == b->step && a->columns == b->columns && a->rows == b->rows &&
		(!a->step || memcmp(a->drops, b->drops, count_of(a) * sizeof *a->drops) == 0);
}

/* Between which drop and the next a spot is, and how far along. */
static int before(int count, nm step, nm at, double *share)
{
	nm on = nm_most(0, nm_least(at, (count - 1) * step));
	int first = least((int)(on / step), count - 2);

	*share = (double)(on - first * step) / (double)step;
	return first;
}

nm levels_drop(const struct levels *levels, nm right, nm down)
{
	double across, along, upper, lower;
	int column = before(levels->columns, levels->step, right, &across);
	int row = before(levels->rows, levels->step, down, &along);
	const nm *above = levels->drops + (size_t)row * (size_t)levels->columns + column;
	const nm *below = above + levels->columns;

	assert(levels->step);
	upper = (double)above[0] + (double)(above[1] - above[0]) * across;
	lower = (double)below[0] + (double)(below[1] - below[0]) * across;
	return llround(upper + (lower - upper) * along);
}

struct drop_range levels_range(const struct levels *levels)
{
	struct drop_range range = { levels->drops[0], levels->drops[0] };

	for (size_t i = 1; i < count_of(levels); i++) {
		range.least = nm_least(range.least, levels->drops[i]);
		range.most = nm_most(range.most, levels->drops[i]);
	}
	return range;
}

bool finish_equal(const struct finish *a, const struct finish *b)
{
	return a->has_level == b->has_level && a->has_fall == b->has_fall &&
		(!a->has_level || (place_equal(a->at, b->at) && a->drop == b->drop)) &&
		(!a->has_fall || (a->is_away == b->is_away && a->percent == b->percent &&
		a->bearing == b->bearing));
}
