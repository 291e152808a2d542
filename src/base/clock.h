/* Time that goes on evenly, whatever the time of day is set to. */
#ifndef BASE_CLOCK_H
#define BASE_CLOCK_H

#include <stdint.h>

/* Milliseconds since some moment before the program began. */
int64_t clock_ms(void);

#endif
