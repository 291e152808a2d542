#include "takeoff/setout/ties.h"
#include "base/stop.h"

#include <string.h>

/* Whether it ties the datum to another fixed point than those before. */
static bool fixes_datum(const struct setout *setout, const struct tie *tie)
{
	if (tie->at.x != 0 || tie->at.y != 0 || setout->datum_tie_count == SETOUT_DATUM_TIES)
		return false;
	for (int i = 0; i < setout->datum_tie_count; i++)
		if (strcmp(setout->datum_ties[i]->name, tie->name) == 0)
			return false;
	return true;
}

void ties_find(struct setout *out, const struct plot *plot, struct arena *arena)
{
	const struct ties *ties = &plot->details.around.ties;
	const struct tie **more = arena_new(arena, ties->count, sizeof *more);

	out->more_ties = more;
	for (size_t i = 0; i < ties->count && !stop_asked(); i++) {
		const struct tie *tie = &ties->items[i];

		if (fixes_datum(out, tie))
			out->datum_ties[out->datum_tie_count++] = tie;
		else
			more[out->more_tie_count++] = tie;
	}
}
