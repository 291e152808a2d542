/* Work that can be stopped. Whatever may take long asks stop_asked within its loops, at least each
 * 10 ms, and returns as soon as it says so: what it has made by then is only half of it and is
 * thrown away by whoever began the work. Where nobody watches, nothing is ever stopped. */
#ifndef BASE_STOP_H
#define BASE_STOP_H

#include <stdbool.h>

/* Says whether the work that is being done should stop: a key waits, the program is to end. */
struct stop_watch {
	bool (*is_wanted)(struct stop_watch *watch);
	int every_ms; /* how long it is not asked again; 0: it is asked each time */
};

/* Work is watched from here on, and no stop is asked for yet. NULL: nobody watches. The watch must
 * last as long. */
void stop_watch_by(struct stop_watch *watch);
/* Whether to stop; once it is so it stays so, until somebody watches anew. Cheap enough for every
 * row of cells and every region. */
bool stop_asked(void);

#endif
