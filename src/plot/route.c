#include "plot/route.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

void route_fini(struct route *route)
{
	free(route->points);
	*route = (struct route){ .count = 0 };
}

void route_add(struct route *route, struct place point)
{
	assert(route->count < ROUTE_POINTS_MOST);
	route->points = memory_grow(route->points, (size_t)route->count, &route->capacity,
		sizeof *route->points);
	route->points[route->count++] = point;
}

struct route route_copy(const struct route *route)
{
	struct route copy = { .count = 0 };

	for (int i = 0; i < route->count; i++)
		route_add(&copy, route->points[i]);
	return copy;
}

bool route_equal(const struct route *a, const struct route *b)
{
	return a->count == b->count && (a->count == 0 || memcmp(a->points, b->points,
		(size_t)a->count * sizeof *a->points) == 0);
}

void route_legs(const struct route *route, struct legs *out)
{
	for (int i = 1; i < route->count; i++)
		legs_add(out, (struct leg){ route->points[i - 1], route->points[i] });
}

void routes_fini(struct routes *routes)
{
	for (size_t i = 0; i < routes->count; i++)
		route_fini(&routes->items[i]);
	free(routes->items);
	*routes = ROUTES_EMPTY;
}

struct route *routes_add(struct routes *routes)
{
	routes->items = memory_grow(routes->items, routes->count, &routes->capacity,
		sizeof *routes->items);
	routes->items[routes->count] = (struct route){ .count = 0 };
	return &routes->items[routes->count++];
}

void routes_remove(struct routes *routes, size_t index)
{
	struct route *route = &routes->items[index];

	route_fini(route);
	memmove(route, route + 1, (--routes->count - index) * sizeof *route);
}

struct routes routes_copy(const struct routes *routes)
{
	struct routes copy = ROUTES_EMPTY;

	for (size_t i = 0; i < routes->count; i++)
		*routes_add(&copy) = route_copy(&routes->items[i]);
	return copy;
}

bool routes_equal(const struct routes *a, const struct routes *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = route_equal(&a->items[i], &b->items[i]);
	return is_equal;
}

void routes_legs(const struct routes *routes, struct legs *out)
{
	for (size_t i = 0; i < routes->count; i++)
		route_legs(&routes->items[i], out);
}
