/* Routes: grid points one after the other, as a run of a fence or a service goes. */
#ifndef PLOT_ROUTE_H
#define PLOT_ROUTE_H

#include "plot/leg.h"

enum { ROUTE_POINTS_LEAST = 2, ROUTE_POINTS_MOST = 64 };

/* Each leg is level or upright, its length over 0. */
struct route {
	struct place *points; /* owned */
	int count;            /* ROUTE_POINTS_LEAST..ROUTE_POINTS_MOST */
	size_t capacity;
};

/* Many of them. Start from ROUTES_EMPTY, end with routes_fini. */
struct routes {
	struct route *items; /* owned */
	size_t count, capacity;
};
#define ROUTES_EMPTY ((struct routes){ NULL, 0, 0 })

void route_fini(struct route *route);
/* Appends a point; there must be room for one more. */
void route_add(struct route *route, struct place point);
struct route route_copy(const struct route *route);
bool route_equal(const struct route *a, const struct route *b);
/* Appends its legs, in their order. */
void route_legs(const struct route *route, struct legs *out);

void routes_fini(struct routes *routes);
/* Appends an empty route; points are added to it. */
struct route *routes_add(struct routes *routes);
void routes_remove(struct routes *routes, size_t index);
struct routes routes_copy(const struct routes *routes);
bool routes_equal(const struct routes *a, const struct routes *b);
/* Appends the legs of all of them, in their order. */
void routes_legs(const struct routes *routes, struct legs *out);

#endif
