/* The sun's rays through a day, for tests of what they shine on. */
#ifndef SUPPORT_RAYS_H
#define SUPPORT_RAYS_H

#include "survey/shade.h"
#include "survey/sun.h"

enum { RAYS_A_DAY = 288 };

/* One for the middle of each 5 minutes that the sun is up; returns how many. */
int rays_of_day(const struct sun_day *day, struct ray rays[RAYS_A_DAY]);
/* How many of them come to each cell. What it takes lives in the arena. */
void rays_count(struct arena *arena, const struct shade_scene *scene, const struct ray *rays,
	int ray_count, uint16_t *lit);

#endif
