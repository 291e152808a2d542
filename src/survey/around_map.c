#include "survey/around_map.h"
#include "base/number.h"
#include "survey/cell_sides.h"
#include "survey/near.h"

static void service_add(unsigned char *cells, int columns, const struct service *service)
{
	struct legs legs = LEGS_EMPTY;

	routes_legs(&service->routes, &legs);
	for (size_t i = 0; i < legs.count; i++)
		cell_sides_mark(cells, columns, legs.items[i],
			service->is_to_lay ? TO_LAY_RIGHT : EXISTING_RIGHT,
			service->is_to_lay ? TO_LAY_BELOW : EXISTING_BELOW);
	legs_fini(&legs);
}

bool obstacle_touches(const struct obstacle *obstacle, nm cell, int x, int y)
{
	const struct near_thing thing = near_obstacle(obstacle, cell);
	const struct cover_box box = { x * cell, y * cell, (x + 1) * cell, (y + 1) * cell, 0 };

	return near_box(&thing, &box);
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
					cells[cell_sides_index(ground->columns, x, y)] |=
						(unsigned char)bit;
	}
}

static bool has_specimens(const struct plants *plants)
{
	for (size_t i = 0; i < plants->count; i++)
		if (plants->items[i].specimen_count)
			return true;
	return false;
}

static void specimens_mark(unsigned char *cells, int columns, const struct plant *plant)
{
	for (size_t i = 0; i < plant->specimen_count; i++) {
		struct place at = plant->specimens[i];

		cells[cell_sides_index(columns, at.x, at.y)] |= CELL_PLANT;
	}
}

struct around_map around_map_of(const struct plot *plot, struct arena *arena)
{
	const struct surroundings *around = &plot->details.around;
	const struct plants *plants = &plot->details.plants;
	int columns = plot->ground.columns, rows = plot->ground.rows;
	unsigned char *cells;

	if (!around->services.count && !around->houses.count && !around->kept.count &&
		!has_specimens(plants))
		return (struct around_map){ columns, rows, NULL };
	cells = arena_new(arena, cell_sides_size(columns, rows), sizeof *cells);
	for (size_t i = 0; i < around->services.count; i++)
		service_add(cells, columns, &around->services.items[i]);
	obstacles_mark(cells, plot, &around->houses, CELL_HOUSE);
	obstacles_mark(cells, plot, &around->kept, CELL_KEPT);
	for (size_t i = 0; i < plants->count; i++)
		specimens_mark(cells, columns, &plants->items[i]);
	return (struct around_map){ columns, rows, cells };
}

int around_map_at(const struct around_map *map, int x, int y)
{
	return map->cells ? map->cells[cell_sides_index(map->columns, x, y)] : 0;
}
