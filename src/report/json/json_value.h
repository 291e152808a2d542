/* Values of the takeoff as JSON.
 *
 * Numbers are put in as raw text: cJSON's own printing may choose an exponent or lose digits.
 * Each cJSON value made here belongs to the caller until it is put into another or printed. */
#ifndef REPORT_JSON_JSON_VALUE_H
#define REPORT_JSON_JSON_VALUE_H

#include "report/words/report.h"

#include <cjson/cJSON.h>

/* At most 9 places, trimmed, never with an exponent. */
cJSON *json_number(double value);
cJSON *json_count(int64_t value);
cJSON *json_money(money amount);
/* Metres, exact. */
cJSON *json_length(nm value);
cJSON *json_lengths(const nm *list, int how_many);
cJSON *json_size(const struct size *block);
cJSON *json_place(struct place at);
/* The region's name; null for NO_REGION. */
cJSON *json_region(const struct takeoff *takeoff, int region);
/* null for NULL. */
cJSON *json_text(const char *text);

/* Takes over value. */
void json_put(cJSON *object, const char *key, cJSON *value);

/* Prints the value and frees it. */
void json_print(struct sink *out, cJSON *value);
/* The same for an object of at least one key, left open for more keys and the caller's "}". */
void json_print_open(struct sink *out, cJSON *object);

#endif
