/* What a takeoff of a large plot takes of time and memory, as the program is run for it. */
#ifndef SUPPORT_MEASURE_H
#define SUPPORT_MEASURE_H

#include "support/shapes.h"

#include <stddef.h>

struct measured {
	int status;     /* of the program, as waitpid gives it */
	double seconds; /* from its start until all of it was read */
	size_t peak;    /* bytes: the most that it had in memory at one time */
	size_t printed; /* bytes */
};

/* Draws the shape, in a process of its own, and runs `parterre takeoff` on it. The peak is never
 * less than what the caller has in memory. */
struct measured measure_takeoff(const struct shape *shape, int size, bool is_json);

/* Bytes of the heap that are in use; 0 where a sanitizer keeps the heap. */
size_t heap_in_use(void);
/* False where a sanitizer or valgrind makes the program's memory another. */
bool memory_is_its_own(void);

#endif
