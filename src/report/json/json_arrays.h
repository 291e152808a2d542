/* Arrays of the takeoff as JSON that are printed from files of their own. */
#ifndef REPORT_JSON_JSON_ARRAYS_H
#define REPORT_JSON_JSON_ARRAYS_H

#include "base/text.h"
#include "takeoff/takeoff.h"

void json_dig(struct text *out, const struct takeoff *takeoff); /* dig_sums too */
void json_stone(struct text *out, const struct takeoff *takeoff);
void json_stone_orders(struct text *out, const struct takeoff *takeoff);
/* One row, or none where no fabric is needed. */
void json_fabric(struct text *out, const struct takeoff *takeoff);
void json_liners(struct text *out, const struct takeoff *takeoff);
void json_edging(struct text *out, const struct takeoff *takeoff); /* edging, edging_cuts */
void json_lawn(struct text *out, const struct takeoff *takeoff);
void json_work(struct text *out, const struct takeoff *takeoff); /* the order of work */

#endif
