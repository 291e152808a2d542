#include "plot/edit/resize.h"
#include "base/number.h"
#include "plot/edit/fence_lay.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/plants_move.h"
#include "plot/edit/surroundings_move.h"

#include <assert.h>
#include <string.h>

/* Where margins move what is on the plan, which then has that size. */
struct resized {
	const struct margins *margins;
	const struct ground *size;
	nm cell;
};

/* Only its size: it has no cells. */
static struct ground size_after(const struct ground *ground, const struct margins *margins)
{
	return (struct ground){ ground->columns + margins->left + margins->right,
		ground->rows + margins->top + margins->bottom, NULL };
}

bool resize_fits(const struct ground *ground, const struct margins *margins)
{
	struct ground size = size_after(ground, margins);

	return size.columns >= 1 && size.columns <= SIDE_MOST && size.rows >= 1 &&
		size.rows <= SIDE_MOST;
}

int64_t resize_loss(const struct plot *plot, const struct margins *margins, int64_t lost[CLASSES])
{
	const struct ground *ground = &plot->ground;
	const struct ground size = size_after(ground, margins);
	int64_t cells = 0;

	memset(lost, 0, CLASSES * sizeof *lost);
	for (int y = 0; y < ground->rows; y++)
		for (int x = 0; x < ground->columns; x++)
			if (!ground_holds(&size, x + margins->left, y + margins->top))
				lost[plot_class_of(plot, ground_cell(ground, x, y))]++;
	for (int class = 0; class < CLASS_OPEN; class++)
		cells += lost[class];
	return cells;
}

struct fence_loss resize_fence_loss(const struct plot *plot, const struct margins *margins)
{
	const struct ground size = size_after(&plot->ground, margins);
	struct fence_loss loss = { 0, 0 };

	for (size_t i = 0; i < plot->details.fence_count; i++) {
		struct fence fence = fence_copy(&plot->details.fences[i]);

		loss.sides += fence_length(&fence);
		loss.gates += (int64_t)fence.gates.count;
		fence_move(&fence, margins->left, margins->top, &size);
		loss.sides -= fence_length(&fence);
		loss.gates -= (int64_t)fence.gates.count;
		fence_fini(&fence);
	}
	return loss;
}

/* ---- What is around -------------------------------------------------------------------------- */

static bool cell_resized(const void *how, struct place *at)
{
	const struct resized *resized = how;

	at->x += resized->margins->left;
	at->y += resized->margins->top;
	return ground_holds(resized->size, at->x, at->y);
}

static struct place point_resized(const void *how, struct place point)
{
	const struct resized *resized = how;

	return (struct place){ point.x + resized->margins->left,
		point.y + resized->margins->top };
}

static nm spot_before(const void *how, bool is_down, nm at)
{
	const struct resized *resized = how;

	return at - resized->cell *
		(is_down ? resized->margins->top : resized->margins->left);
}

static void around_resize(struct details *details, const struct resized *resized)
{
	const struct points_way points = { resized->size, point_resized, resized };
	const struct spots_way spots = { resized->size, resized->cell, spot_before, resized };

	surroundings_move(&details->around, &points);
	finish_move(&details->finish, &points);
	levels_move(&details->levels, &spots);
}

static int64_t service_sides(const struct services *services)
{
	struct legs legs = LEGS_EMPTY;
	int64_t sides;

	services_legs(services, &legs);
	sides = legs_length(&legs);
	legs_fini(&legs);
	return sides;
}

/* Specimens that would be gone. */
static int64_t specimen_loss(const struct details *details, const struct resized *resized)
{
	int64_t lost = 0;

	for (size_t i = 0; i < details->plants.count; i++) {
		const struct plant *plant = &details->plants.items[i];

		for (size_t j = 0; j < plant->specimen_count; j++) {
			struct place at = plant->specimens[j];

			lost += !cell_resized(resized, &at);
		}
	}
	return lost;
}

struct around_loss resize_around_loss(const struct plot *plot, const struct margins *margins)
{
	const struct surroundings *around = &plot->details.around;
	const struct ground size = size_after(&plot->ground, margins);
	const struct resized resized = { margins, &size, plot_cell(plot) };
	const struct points_way way = { &size, point_resized, &resized };
	struct surroundings left = surroundings_copy(around);
	struct finish finish = plot->details.finish;
	struct around_loss loss;

	surroundings_move(&left, &way);
	finish_move(&finish, &way);
	loss = (struct around_loss){
		service_sides(&around->services) - service_sides(&left.services),
		(int64_t)(around->kept.count - left.kept.count),
		(int64_t)(around->ties.count - left.ties.count),
		specimen_loss(&plot->details, &resized),
		around->has_drop && !left.has_drop,
		plot->details.finish.has_level && !finish.has_level };
	surroundings_fini(&left);
	return loss;
}

/* ---- The ground ------------------------------------------------------------------------------ */

/* Copies what both plans have in common. */
static void copy_rows(struct ground *to, const struct ground *from, const struct margins *margins)
{
	int first = most(-margins->left, 0), end = from->columns + least(margins->right, 0);

	if (end <= first)
		return;
	for (int y = most(-margins->top, 0); y < from->rows + least(margins->bottom, 0); y++)
		memcpy(ground_at(to, first + margins->left, y + margins->top),
			ground_at(from, first, y), (size_t)(end - first));
}

static void move_axis(struct plot *plot, const struct margins *margins)
{
	struct value axis = *block_value(&plot->details.head, HEAD_AXIS);

	if (!axis.set)
		return;
	axis.as.place.x += 2 * margins->left;
	axis.as.place.y += 2 * margins->top;
	axis.set = axis.as.place.x >= 1 && axis.as.place.x <= 2 * plot->ground.columns - 1 &&
		axis.as.place.y >= 1 && axis.as.place.y <= 2 * plot->ground.rows - 1;
	block_set(&plot->details.head, HEAD_AXIS, axis);
}

/* ---- All of it ------------------------------------------------------------------------------- */

void resize_plot(struct plot *plot, const struct margins *margins)
{
	struct ground old = plot->ground, size = size_after(&old, margins);
	const struct resized resized = { margins, &size, plot_cell(plot) };

	assert(resize_fits(&old, margins));
	ground_init(&plot->ground, size.columns, size.rows);
	copy_rows(&plot->ground, &old, margins);
	names_move(&plot->details.names, &old, cell_resized, &resized);
	drifts_move(&plot->details.plants, &old, cell_resized, &resized);
	specimens_move(&plot->details.plants, &plot->ground, cell_resized, &resized);
	ground_fini(&old);
	around_resize(&plot->details, &resized);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_move(&plot->details.fences[i], margins->left, margins->top, &plot->ground);
	move_axis(plot, margins);
}
