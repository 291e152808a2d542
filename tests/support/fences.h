/* Fences for tests, in short words: "0,0 4,0 4,3; 0,1 2,1" are two runs, and so for gates. */
#ifndef SUPPORT_FENCES_H
#define SUPPORT_FENCES_H

#include "plot/plot.h"

/* Adds a fence named "Fence"; gates may be NULL. */
struct fence *fence_from(struct plot *plot, const char *runs, const char *gates);
/* Fails the test unless the fence has just these runs and gates, in order and direction. */
void fence_is(const struct fence *fence, const char *runs, const char *gates);

#endif
