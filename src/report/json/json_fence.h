/* The takeoff's array of fences as JSON. */
#ifndef REPORT_JSON_JSON_FENCE_H
#define REPORT_JSON_JSON_FENCE_H

#include "base/text.h"
#include "takeoff/takeoff.h"

void json_fence(struct text *out, const struct takeoff *takeoff);

#endif
