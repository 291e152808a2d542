#include "survey/around_map.h"
#include "base/number.h"
#include "plot/edit/lay.h"

static size_t index_of(int columns, int x, int y)
{
	return (size_t)(y + 1) * (size_t)(columns + 1) + (size_t)(x + 1);
}

/* An upright leg lies right of the cells before it, a level one below those above it. */
static void leg_add(unsigned char *cells, int columns, struct leg leg, bool is_to_lay)
{
	struct leg f = leg_forward(leg);
	int right = is_to_lay ? TO_LAY_RIGHT : EXISTING_RIGHT;
	int below = is_to_lay ? TO_LAY_BELOW : EXISTING_BELOW;

	if (leg_is_upright(f))
		for (int y = f.from.y; y < f.to.y; y++)
			cells[index_of(columns, f.from.x - 1, y)] |= (unsigned char)right;
	else
		for (int x = f.from.x; x < f.to.x; x++)
			cells[index_of(columns, x, f.from.y - 1)] |= (unsigned char)below;
}

static void service_add(unsigned char *cells, int columns, const struct service *service)
{
	struct legs legs = LEGS_EMPTY;

	routes_legs(&service->routes, &legs);
	for (size_t i = 0; i < legs.count; i++)
		leg_add(cells, columns, legs.items[i], service->is_to_lay);
	legs_fini(&legs);
}

/* From a cell's nearest edge; 0 where the line goes through it or along it. */
static int cells_off(int line, int cell)
{
	return most(most(line - (cell + 1), cell - line), 0);
}

bool obstacle_touches(const struct obstacle *obstacle, nm cell, int x, int y)
{
	double right = (double)(cells_off(obstacle->at.x, x) * cell);
	double down = (double)(cells_off(obstacle->at.y, y) * cell);
	double radius = (double)obstacle->radius;

	return obstacle->radius ? right * right + down * down < radius * radius :
		rectangle_holds(obstacle->cells, (struct place){ x, y });
}

/* All that the obstacle can be on. */
static struct rectangle extent(const struct obstacle *obstacle, nm cell)
{
	int reach = (int)(obstacle->radius / cell) + 1;

	return !obstacle->radius ? obstacle->cells : (struct rectangle){ obstacle->at.x - reach,
		obstacle->at.y - reach, obstacle->at.x + reach, obstacle->at.y + reach };
}

static void obstacles_mark(unsigned char *cells, const struct plot *plot,
	const struct obstacles *obstacles, int bit)
{
	const struct ground *ground = &plot->ground;
	nm cell = plot_cell(plot);

	for (size_t i = 0; i < obstacles->count; i++) {
		const struct obstacle *obstacle = &obstacles->items[i];
		struct rectangle r = extent(obstacle, cell);

		for (int y = most(r.top, 0); y <= least(r.bottom, ground->rows - 1); y++)
			for (int x = most(r.left, 0); x <= least(r.right, ground->columns - 1); x++)
				if (obstacle_touches(obstacle, cell, x, y))
					cells[index_of(ground->columns, x, y)] |=
						(unsigned char)bit;
	}
}

struct around_map around_map_of(const struct plot *plot, struct arena *arena)
{
	const struct surroundings *around = &plot->details.around;
	int columns = plot->ground.columns, rows = plot->ground.rows;
	unsigned char *cells;

	if (!around->services.count && !around->houses.count && !around->kept.count)
		return (struct around_map){ columns, rows, NULL };
	cells = arena_new(arena, (size_t)(columns + 1) * (size_t)(rows + 1), 1);
	for (size_t i = 0; i < around->services.count; i++)
		service_add(cells, columns, &around->services.items[i]);
	obstacles_mark(cells, plot, &around->houses, CELL_HOUSE);
	obstacles_mark(cells, plot, &around->kept, CELL_KEPT);
	return (struct around_map){ columns, rows, cells };
}

int around_map_at(const struct around_map *map, int x, int y)
{
	return map->cells ? map->cells[index_of(map->columns, x, y)] : 0;
}
