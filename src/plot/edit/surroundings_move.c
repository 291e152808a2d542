#include "plot/edit/surroundings_move.h"
#include "base/number.h"

/* False where the point then lies outside the plan. */
static bool point_move(struct place *point, const struct points_way *way)
{
	*point = way->point(way->how, *point);
	return point->x >= 0 && point->y >= 0 && point->x <= way->size->columns &&
		point->y <= way->size->rows;
}

/* Legs that lose their length go; what is left of the others goes on where it did. */
static void route_move(struct routes *out, const struct route *route, const struct points_way *way)
{
	struct route *to = NULL;

	for (int i = 1; i < route->count; i++) {
		struct leg leg = { way->point(way->how, route->points[i - 1]),
			way->point(way->how, route->points[i]) };

		if (!leg_is_straight(leg) ||
			!leg_clip(leg, way->size->columns, way->size->rows, &leg))
			continue;
		if (!to || !place_equal(to->points[to->count - 1], leg.from))
			route_add(to = routes_add(out), leg.from);
		route_add(to, leg.to);
	}
}

static void service_move(struct service *service, const struct points_way *way)
{
	struct routes moved = ROUTES_EMPTY;

	for (size_t i = 0; i < service->routes.count; i++)
		route_move(&moved, &service->routes.items[i], way);
	routes_fini(&service->routes);
	service->routes = moved;
}

/* Both ends of one direction of a rectangle, the last inclusive. */
static void ends_hold(int *first, int *last)
{
	*first = held(*first, -CORNER_MOST, CORNER_MOST - 1);
	*last = held(*last, *first, CORNER_MOST - 1);
}

static void rectangle_move(struct rectangle *cells, const struct points_way *way)
{
	struct place from = way->point(way->how, (struct place){ cells->left, cells->top });
	struct place to = way->point(way->how,
		(struct place){ cells->right + 1, cells->bottom + 1 });

	*cells = (struct rectangle){ from.x, from.y, to.x - 1, to.y - 1 };
	ends_hold(&cells->left, &cells->right);
	ends_hold(&cells->top, &cells->bottom);
}

static void obstacles_move(struct obstacles *obstacles, const struct points_way *way)
{
	for (size_t i = 0; i < obstacles->count;) {
		struct obstacle *obstacle = &obstacles->items[i];
		bool stays = true;

		if (obstacle->radius)
			stays = point_move(&obstacle->at, way);
		else
			rectangle_move(&obstacle->cells, way);
		if (stays)
			i++;
		else
			obstacles_remove(obstacles, i);
	}
}

static void ties_move(struct ties *ties, const struct points_way *way)
{
	for (size_t i = 0; i < ties->count;) {
		if (point_move(&ties->items[i].at, way))
			i++;
		else
			ties_remove(ties, i);
	}
}

void surroundings_move(struct surroundings *around, const struct points_way *way)
{
	for (size_t i = 0; i < around->services.count; i++)
		service_move(&around->services.items[i], way);
	obstacles_move(&around->houses, way);
	obstacles_move(&around->shades, way);
	obstacles_move(&around->kept, way);
	ties_move(&around->ties, way);
	around->has_drop = around->has_drop && point_move(&around->drop, way);
	around->has_tap = around->has_tap && point_move(&around->tap, way);
}

void finish_move(struct finish *finish, const struct points_way *way)
{
	finish->has_level = finish->has_level && point_move(&finish->at, way);
}

/* ---- All points ------------------------------------------------------------------------------ */

struct test {
	bool (*holds)(const void *how, struct place point);
	const void *how;
};

static bool services_all(const struct services *services, const struct test *test)
{
	struct legs legs = LEGS_EMPTY;
	bool holds = true;

	services_legs(services, &legs);
	for (size_t i = 0; i < legs.count && holds; i++)
		holds = test->holds(test->how, legs.items[i].from) &&
			test->holds(test->how, legs.items[i].to);
	legs_fini(&legs);
	return holds;
}

static bool obstacles_all(const struct obstacles *obstacles, const struct test *test)
{
	bool holds = true;

	for (size_t i = 0; i < obstacles->count && holds; i++) {
		const struct obstacle *obstacle = &obstacles->items[i];
		const struct rectangle *r = &obstacle->cells;

		if (obstacle->radius)
			holds = test->holds(test->how, obstacle->at);
		else
			holds = test->holds(test->how, (struct place){ r->left, r->top }) &&
				test->holds(test->how,
					(struct place){ r->right + 1, r->bottom + 1 });
	}
	return holds;
}

bool surroundings_all(const struct surroundings *around, const struct finish *finish,
	bool (*holds)(const void *how, struct place point), const void *how)
{
	const struct test test = { holds, how };
	bool all = services_all(&around->services, &test) &&
		obstacles_all(&around->houses, &test) &&
		obstacles_all(&around->shades, &test) && obstacles_all(&around->kept, &test);

	for (size_t i = 0; i < around->ties.count && all; i++)
		all = holds(how, around->ties.items[i].at);
	return all && (!around->has_drop || holds(how, around->drop)) &&
		(!around->has_tap || holds(how, around->tap)) &&
		(!finish->has_level || holds(how, finish->at));
}
