/* A stop (base/stop.h) at an ask of a given number: work that can be stopped is stopped wherever
 * one likes, on every machine at the same place. */
#ifndef SUPPORT_STOPPER_H
#define SUPPORT_STOPPER_H

#include "base/stop.h"

#include <stdint.h>

struct stopper {
	struct stop_watch watch; /* first */
	int64_t asks;            /* so far */
	int64_t at;              /* which asks for a stop, from 1; 0: none */
};

/* Watches from here on, until stopper_end. */
void stopper_begin(struct stopper *stopper, int64_t at);
void stopper_end(void);

#endif
