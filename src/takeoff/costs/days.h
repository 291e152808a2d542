/* When things are brought: the goods of a day come together, days in the order of the work. The one
 * place that says so. */
#ifndef TAKEOFF_COSTS_DAYS_H
#define TAKEOFF_COSTS_DAYS_H

#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"

/* Goods of the plot's own are there before all begins. Concrete cures while the rest goes on, and
 * the spoil of its holes leaves with the rest; soil comes when walls have cured, panels when
 * nothing must get past the posts any more, plants when nothing is built any more. */
enum day { DAY_OTHER, DAY_POSTS, DAY_DIG, DAY_STONE, DAY_WALLS, DAY_FILL, DAY_PANELS,
	DAY_PLANTS, DAY_LAWN };
enum { DAYS = DAY_LAWN + 1 };

/* "posts", "Posts and concrete". */
extern const struct word day_words[DAYS];
/* The day of the step that takes the item, or one before it. */
enum day day_of(const struct item *item);
/* The section whose goods come on the day. */
enum section day_section(enum day day);

#endif
