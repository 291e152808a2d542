#include "plot/edit/rescale.h"
#include "base/memory.h"
#include "base/number.h"
#include "plot/edit/fence_remake.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/plants_move.h"
#include "plot/edit/surroundings_move.h"

#include <assert.h>
#include <stdlib.h>

/* ---- One direction --------------------------------------------------------------------------- */

/* The axis, in half cells of the new grid, nearest to where it was; always inside the plan. */
static int axis_scaled(const struct scale *scale, int axis)
{
	nm at = axis * scale->old_cell;
	int half_cells = (int)((2 * at + scale->new_cell) / (2 * scale->new_cell));

	if (half_cells < 1)
		return 1;
	/* On a line without a cell's middle after it: the middle of the cell before it instead. */
	if (half_cells % 2 == 0 &&
		at + scale->new_cell > (nm)2 * scale->old_count * scale->old_cell)
		return half_cells - 1;
	return half_cells;
}

static int count_scaled(const struct scale *scale)
{
	nm doubled = (2 * scale->old_count - scale->old_axis) * scale->old_cell +
		(scale->new_axis + 1) * scale->new_cell;
	int64_t count = doubled / (2 * scale->new_cell);

	return most((int)count, 1);
}

/* is_mirrored: the plot is laid on this direction's axis, which is at `axis` half cells. */
static struct scale scale_of(int count, nm old_cell, nm new_cell, int axis, bool is_mirrored)
{
	struct scale scale = { .old_cell = old_cell, .new_cell = new_cell, .old_count = count };

	if (is_mirrored) {
		scale.old_axis = axis;
		scale.new_axis = axis_scaled(&scale, axis);
	}
	scale.new_count = count_scaled(&scale);
	return scale;
}

/* Before, at or after the axis: less than 0, 0, more than 0. */
static int side_of(const struct scale *scale, int cell)
{
	return 2 * cell + 1 - scale->new_axis;
}

/* The old cell under the middle of a new one. */
static int cell_under(const struct scale *scale, int cell, bool is_after)
{
	int side = side_of(scale, cell);
	nm at = scale->old_axis * scale->old_cell + side * scale->new_cell;
	int64_t under = at / (2 * scale->old_cell);
	bool is_line = at % (2 * scale->old_cell) == 0;

	if (is_line && (side > 0 || (side == 0 && !is_after)))
		under--;
	return held(under, 0, scale->old_count - 1);
}

/* The line of the new grid that is nearest to an old one, on the plan or beyond it; of two as near
 * the one farther from the axis, so that the plan's edge stays its edge. */
static int line_near(const struct scale *scale, int line)
{
	nm at = (2 * line - scale->old_axis) * scale->old_cell, away = at < 0 ? -at : at;
	int odd = scale->new_axis % 2; /* points are half a cell off an axis that divides cells */
	nm half_cells = odd;

	if (away > odd * scale->new_cell)
		half_cells += (away - odd * scale->new_cell + scale->new_cell) /
			(2 * scale->new_cell) * 2;
	half_cells = (at < 0 ? -half_cells : half_cells) + scale->new_axis;
	return (int)(half_cells / 2);
}

/* The same of the plan's grid points. */
static int point_near(const struct scale *scale, int point)
{
	/* a plan of less than half a new cell has one all the same */
	if (point == scale->old_count)
		return scale->new_count;
	return held(line_near(scale, point), 0, scale->new_count);
}

/* The same of a corner, which may lie beyond the plan: there it stays. */
static int corner_near(const struct scale *scale, int corner)
{
	if (corner < 0)
		return least(line_near(scale, corner), 0);
	if (corner > scale->old_count)
		return most(line_near(scale, corner), scale->new_count);
	return point_near(scale, corner);
}

/* Whether it is no more than another number for the same line. */
static bool keeps_line(const struct scale *scale, int line)
{
	return (2 * line - scale->old_axis) * scale->old_cell ==
		(2 * corner_near(scale, line) - scale->new_axis) * scale->new_cell;
}

/* ---- Both ------------------------------------------------------------------------------------ */

struct rescale rescale_of(const struct plot *plot, nm cell)
{
	struct mirror mirror = mirror_of(plot);
	nm old = plot_cell(plot);
	bool across = mirror.kind != MIRROR_OFF && mirror.kind != MIRROR_TOP_BOTTOM;
	bool down = mirror.kind != MIRROR_OFF && mirror.kind != MIRROR_LEFT_RIGHT;

	return (struct rescale){
		scale_of(plot->ground.columns, old, cell, mirror.across, across),
		scale_of(plot->ground.rows, old, cell, mirror.down, down),
	};
}

bool rescale_fits(const struct rescale *rescale)
{
	return rescale->across.new_count <= SIDE_MOST && rescale->down.new_count <= SIDE_MOST;
}

/* The old cells that a new one covers in part or whole: false where it reaches over the edge. */
static bool covered(const struct scale *scale, int cell, int *first, int *last)
{
	nm from = scale->old_axis * scale->old_cell +
		(2 * cell - scale->new_axis) * scale->new_cell;
	nm until = from + 2 * scale->new_cell, old = 2 * scale->old_cell;

	if (from < 0 || until > scale->old_count * old)
		return false;
	*first = (int)(from / old);
	*last = (int)((until + old - 1) / old) - 1;
	return true;
}

static bool is_rounded(const struct rescale *rescale, const struct ground *ground, int x, int y)
{
	int left, right, top, bottom;
	char letter;

	if (!covered(&rescale->across, x, &left, &right) ||
		!covered(&rescale->down, y, &top, &bottom))
		return true;
	letter = ground_cell(ground, left, top);
	for (int row = top; row <= bottom; row++)
		for (int column = left; column <= right; column++)
			if (ground_cell(ground, column, row) != letter)
				return true;
	return false;
}

int64_t rescale_rounded(const struct rescale *rescale, const struct ground *ground)
{
	int64_t count = 0;

	assert(rescale_fits(rescale));
	for (int y = 0; y < rescale->down.new_count; y++)
		for (int x = 0; x < rescale->across.new_count; x++)
			count += is_rounded(rescale, ground, x, y);
	return count;
}

/* For a middle on the axis: which old cells are under it before [0] and after [1] the other
 * axis. */
struct samples {
	int *under[2];
};

static struct samples samples_of(const struct scale *scale, bool is_turned)
{
	struct samples samples;

	for (int after = 0; after <= 1; after++) {
		samples.under[after] = memory_new((size_t)scale->new_count, sizeof(int));
		for (int i = 0; i < scale->new_count; i++)
			samples.under[after][i] = cell_under(scale, i, is_turned && after);
	}
	return samples;
}

static void samples_fini(struct samples *samples)
{
	free(samples->under[0]);
	free(samples->under[1]);
}

static void ground_sample(struct ground *to, const struct ground *from,
	const struct rescale *rescale, bool is_turned)
{
	struct samples columns = samples_of(&rescale->across, is_turned);
	struct samples rows = samples_of(&rescale->down, is_turned);
	char *cell = to->cells;

	for (int y = 0; y < to->rows; y++) {
		const int *under = columns.under[side_of(&rescale->down, y) > 0];

		for (int x = 0; x < to->columns; x++) {
			int row = rows.under[side_of(&rescale->across, x) > 0][y];

			*cell++ = ground_cell(from, under[x], row);
		}
	}
	samples_fini(&columns);
	samples_fini(&rows);
}

static int axis_held(const struct scale *scale, int axis)
{
	return least(axis_scaled(scale, axis), 2 * scale->new_count - 1);
}

static void head_rescale(struct block *head, const struct rescale *rescale)
{
	struct value axis = *block_value(head, HEAD_AXIS);

	block_set(head, HEAD_CELL,
		(struct value){ .set = true, .as.length = rescale->across.new_cell });
	if (!axis.set)
		return;
	axis.as.place.x = axis_held(&rescale->across, axis.as.place.x);
	axis.as.place.y = axis_held(&rescale->down, axis.as.place.y);
	block_set(head, HEAD_AXIS, axis);
}

static struct place place_near(const struct rescale *rescale, struct place old)
{
	return (struct place){ point_near(&rescale->across, old.x),
		point_near(&rescale->down, old.y) };
}

static bool is_place(const void *how, struct place old)
{
	const struct rescale *rescale = how;

	return keeps_line(&rescale->across, old.x) && keeps_line(&rescale->down, old.y);
}

bool rescale_keeps_around(const struct rescale *rescale, const struct plot *plot)
{
	return surroundings_all(&plot->details.around, &plot->details.finish, is_place, rescale);
}

bool rescale_keeps_fences(const struct rescale *rescale, const struct plot *plot)
{
	struct legs legs = LEGS_EMPTY;
	bool are_kept = true;

	for (size_t i = 0; i < plot->details.fence_count; i++) {
		fence_legs(&plot->details.fences[i], &legs);
		legs_add_all(&legs, &plot->details.fences[i].gates);
	}
	for (size_t i = 0; i < legs.count && are_kept; i++)
		are_kept = is_place(rescale, legs.items[i].from) &&
			is_place(rescale, legs.items[i].to);
	legs_fini(&legs);
	return are_kept;
}

static void leg_add_near(struct legs *legs, const struct rescale *rescale, struct leg old)
{
	struct leg leg = { place_near(rescale, old.from), place_near(rescale, old.to) };

	if (leg_is_straight(leg))
		legs_add(legs, leg);
}

static void fence_rescale(struct fence *fence, const struct rescale *rescale)
{
	struct legs old = LEGS_EMPTY, legs = LEGS_EMPTY, gates = LEGS_EMPTY;

	fence_legs(fence, &old);
	for (size_t i = 0; i < old.count; i++)
		leg_add_near(&legs, rescale, old.items[i]);
	for (size_t i = 0; i < fence->gates.count; i++)
		leg_add_near(&gates, rescale, fence->gates.items[i]);
	fence_remake(fence, &legs, &gates);
	legs_fini(&old);
}

static int cell_over(const struct scale *scale, int cell)
{
	nm at = scale->new_axis * scale->new_cell +
		(2 * cell + 1 - scale->old_axis) * scale->old_cell;

	return held(at / (2 * scale->new_cell), 0, scale->new_count - 1);
}

/* The same, but of two cells that meet under the middle that which is nearer to axis or datum: so
 * specimens that were images of each other are. */
static int cell_stood_in(const struct scale *scale, int cell)
{
	nm at = (2 * cell + 1 - scale->old_axis) * scale->old_cell;
	nm until = scale->new_axis * scale->new_cell + at, side = 2 * scale->new_cell;
	bool is_line = until % side == 0;

	return held(until / side - (is_line && at >= 0), 0, scale->new_count - 1);
}

struct place rescale_cell(const struct rescale *rescale, struct place old)
{
	return (struct place){ cell_over(&rescale->across, old.x),
		cell_over(&rescale->down, old.y) };
}

/* Whether the middle of an old cell is that of the new one over it. */
static bool keeps_middle(const struct scale *scale, int cell)
{
	return (2 * cell + 1 - scale->old_axis) * scale->old_cell ==
		(2 * cell_stood_in(scale, cell) + 1 - scale->new_axis) * scale->new_cell;
}

bool rescale_keeps_plants(const struct rescale *rescale, const struct plot *plot)
{
	const struct plants *plants = &plot->details.plants;

	for (size_t i = 0; i < plants->count; i++)
		for (size_t j = 0; j < plants->items[i].specimen_count; j++)
			if (!keeps_middle(&rescale->across, plants->items[i].specimens[j].x) ||
				!keeps_middle(&rescale->down, plants->items[i].specimens[j].y))
				return false;
	return true;
}

/* A cell of the old ground goes to one of the new of its letter, or is gone. */
struct rescaled {
	const struct rescale *rescale;
	const struct ground *old, *new;
};

static bool specimen_rescaled(const void *how, struct place *at)
{
	const struct rescale *rescale = how;

	*at = (struct place){ cell_stood_in(&rescale->across, at->x),
		cell_stood_in(&rescale->down, at->y) };
	return true;
}

static bool cell_rescaled(const void *how, struct place *at)
{
	const struct rescaled *rescaled = how;
	char letter = ground_cell(rescaled->old, at->x, at->y);

	*at = rescale_cell(rescaled->rescale, *at);
	return ground_cell(rescaled->new, at->x, at->y) == letter;
}

static struct place corner_rescaled(const void *how, struct place corner)
{
	const struct rescale *rescale = how;

	return (struct place){ corner_near(&rescale->across, corner.x),
		corner_near(&rescale->down, corner.y) };
}

static nm spot_before(const void *how, bool is_down, nm at)
{
	const struct rescale *rescale = how;
	const struct scale *scale = is_down ? &rescale->down : &rescale->across;

	return at + (scale->old_axis * scale->old_cell - scale->new_axis * scale->new_cell) / 2;
}

static void around_rescale(struct plot *plot, const struct rescale *rescale)
{
	const struct points_way points = { &plot->ground, corner_rescaled, rescale };
	const struct spots_way spots = { &plot->ground, rescale->across.new_cell, spot_before,
		rescale };

	surroundings_move(&plot->details.around, &points);
	finish_move(&plot->details.finish, &points);
	levels_move(&plot->details.levels, &spots);
}

void rescale_plot(struct plot *plot, const struct rescale *rescale)
{
	struct ground old = plot->ground;
	const struct rescaled cells = { rescale, &old, &plot->ground };

	assert(rescale_fits(rescale));
	ground_init(&plot->ground, rescale->across.new_count, rescale->down.new_count);
	ground_sample(&plot->ground, &old, rescale, mirror_of(plot).kind == MIRROR_HALF_TURN);
	names_move(&plot->details.names, &old, cell_rescaled, &cells);
	drifts_move(&plot->details.plants, &old, cell_rescaled, &cells);
	specimens_move(&plot->details.plants, &plot->ground, specimen_rescaled, rescale);
	ground_fini(&old);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_rescale(&plot->details.fences[i], rescale);
	around_rescale(plot, rescale);
	head_rescale(&plot->details.head, rescale);
}
