/* Prices and costs in the takeoff's JSON. */
#ifndef REPORT_JSON_JSON_COSTS_H
#define REPORT_JSON_JSON_COSTS_H

#include "report/json/json_value.h"

/* The keys of an item that has a price; nothing for one that has none. */
void json_put_price(cJSON *row, const struct takeoff *takeoff, const struct item *item);
/* The key "costs": null without a price book. */
void json_costs(struct text *out, const struct takeoff *takeoff);

#endif
