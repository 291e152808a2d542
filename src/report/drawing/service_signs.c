#include "report/drawing/service_signs.h"
#include "base/stop.h"

enum { EXISTING = '*', TO_LAY = '~', BY_HAND = '/', HEADER = '%', TAP = '@' };
/* One in so many characters, each row's shifted by half of that. */
enum { EVERY = 4 };

/* ---- Lines ----------------------------------------------------------------------------------- */

static bool takes_line(char c)
{
	return c == POINT_FREE || c == POINT_BLANK || c == '.' || c == ':';
}

static void draw_leg(struct points *points, struct leg leg, char sign)
{
	const struct cuts *cuts = &points->cuts;
	struct leg f = leg_forward(leg);
	int right = f.to.x * cuts->across, bottom = f.to.y * cuts->down;

	for (int row = f.from.y * cuts->down; row <= bottom && !stop_asked(); row++)
		for (int column = f.from.x * cuts->across; column <= right; column++)
			if (takes_line(points_at(points, column, row)))
				points_put(points, column, row, sign);
}

static void draw_service(struct points *points, const struct service *service)
{
	struct legs legs = LEGS_EMPTY;

	routes_legs(&service->routes, &legs);
	for (size_t i = 0; i < legs.count && !stop_asked(); i++)
		draw_leg(points, legs.items[i], service->is_to_lay ? TO_LAY : EXISTING);
	legs_fini(&legs);
}

/* The tap is seen wherever it is. */
static void draw_watering(struct points *points, const struct takeoff *takeoff)
{
	const struct surroundings *around = &takeoff->plot.details.around;
	const struct legs *legs = &takeoff->watering.legs;

	for (size_t i = 0; i < legs->count && !stop_asked(); i++)
		draw_leg(points, legs->items[i], HEADER);
	if (around->has_tap)
		points_put(points, around->tap.x * points->cuts.across,
			around->tap.y * points->cuts.down, TAP);
}

/* ---- By hand --------------------------------------------------------------------------------- */

static void strew(struct points *points, const struct near_cells *cells)
{
	const struct cuts *cuts = &points->cuts;
	const struct rectangle *within = &cells->within;

	for (int row = within->top * cuts->down; row < (within->bottom + 1) * cuts->down &&
	     !stop_asked(); row++)
		for (int column = within->left * cuts->across; column < (within->right + 1) *
		     cuts->across; column++)
			if ((column + row % 2 * EVERY / 2) % EVERY == EVERY / 2 &&
			    points_at(points, column, row) == POINT_FREE &&
			    near_cells_hold(cells, column / cuts->across, row / cuts->down))
				points_put(points, column, row, BY_HAND);
}

void service_signs_draw(struct points *points, const struct takeoff *takeoff)
{
	const struct services *services = &takeoff->plot.details.around.services;
	const struct service_lines *lines = &takeoff->services;
	struct near_cells cells;

	for (size_t i = 0; i < services->count && !stop_asked(); i++)
		draw_service(points, &services->items[i]);
	draw_watering(points, takeoff);
	if (lines->existing + lines->kept_count == 0)
		return;
	near_cells_begin(&cells, &takeoff->survey);
	service_lines_near(&takeoff->plot, &cells);
	strew(points, &cells);
	near_cells_end(&cells);
}
