#include "report/compare/comparison.h"

void comparison_make(struct comparison *out, struct arena *arena, struct arena *words,
	const struct compared versions[static VERSIONS])
{
	*out = (struct comparison){ .arena = arena };
	for (int i = 0; i < VERSIONS; i++)
		out->versions[i] = (struct report){ .words = words, .plot = versions[i].plot,
			.takeoff = versions[i].takeoff, .units = plot_units(versions[NEW].plot),
			.file = versions[i].file };
	region_pairs_find(&out->regions, arena, &versions[OLD].takeoff->survey,
		&versions[NEW].takeoff->survey);
}
