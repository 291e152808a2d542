#include "support/rays.h"

int rays_of_day(const struct sun_day *day, struct ray rays[RAYS_A_DAY])
{
	int ray_count = 0;

	for (int i = 0; i < RAYS_A_DAY; i++) {
		struct sun_place place = sun_place(day, (i + 0.5) / 12);

		if (place.height > 0)
			rays[ray_count++] = ray_from(place.height, place.azimuth, 0);
	}
	return ray_count;
}

void rays_count(struct arena *arena, const struct shade_scene *scene, const struct ray *rays,
	int ray_count, uint16_t *lit)
{
	shade_count(shade_new(arena, scene), rays, ray_count, lit);
}
