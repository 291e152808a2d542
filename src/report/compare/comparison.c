#include "report/compare/comparison.h"

void comparison_make(struct comparison *out, struct arena *arena, struct arena *words,
	const struct compared sides[static SIDES])
{
	*out = (struct comparison){ .arena = arena };
	for (int i = 0; i < SIDES; i++)
		out->sides[i] = (struct report){ .words = words, .plot = sides[i].plot,
			.takeoff = sides[i].takeoff, .units = plot_units(sides[NEW].plot),
			.file = sides[i].file };
	region_pairs_find(&out->regions, arena, &sides[OLD].takeoff->survey,
		&sides[NEW].takeoff->survey);
}
