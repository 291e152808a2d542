/* The JSON of a garden's takeoff, read back with cJSON's own reader. */
#ifndef SUPPORT_JSON_H
#define SUPPORT_JSON_H

#include "base/text.h"
#include "support/garden.h"

#include <cjson/cJSON.h>

/* Counts the garden, prints its JSON into *text in place of what is there and reads that. Fails the
 * test where it is not JSON to its end. The caller deletes it. */
cJSON *json_of(struct garden *garden, struct text *text);
/* The value of a key; fails the test where the object has none. */
const cJSON *json_get(const cJSON *object, const char *key);

#endif
