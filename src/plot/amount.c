#include "plot/amount.h"
#include "base/measure.h"

enum { PLACES = 6 };

/* The pound and the foot by the international agreement of 1959: exact. */
#define KG_PER_LB 0.45359237
#define M_PER_FT 0.3048
#define M2_PER_SQ_FT (M_PER_FT * M_PER_FT)
#define M3_PER_CU_FT (M_PER_FT * M_PER_FT * M_PER_FT)
#define M3_PER_CU_YD (27 * M3_PER_CU_FT)

static const struct {
	const char *word;
	enum quantity quantity;
	double si; /* of one */
	bool is_metric;
} units[AMOUNT_UNITS] = {
	[AMOUNT_LB_CU_FT] = { "lb/cu ft", QUANTITY_DENSITY, KG_PER_LB / M3_PER_CU_FT, false },
	[AMOUNT_LB_CU_YD] = { "lb/cu yd", QUANTITY_DENSITY, KG_PER_LB / M3_PER_CU_YD, false },
	[AMOUNT_KG_M3] = { "kg/m3", QUANTITY_DENSITY, 1, true },
	[AMOUNT_CU_FT] = { "cu ft", QUANTITY_VOLUME, M3_PER_CU_FT, false },
	[AMOUNT_CU_YD] = { "cu yd", QUANTITY_VOLUME, M3_PER_CU_YD, false },
	[AMOUNT_LITRE] = { "L", QUANTITY_VOLUME, 0.001, true },
	[AMOUNT_M3] = { "m3", QUANTITY_VOLUME, 1, true },
	[AMOUNT_LB] = { "lb", QUANTITY_WEIGHT, KG_PER_LB, false },
	[AMOUNT_KG] = { "kg", QUANTITY_WEIGHT, 1, true },
	[AMOUNT_LB_1000_SQ_FT] = { "lb/1000 sq ft", QUANTITY_RATE,
		KG_PER_LB / (1000 * M2_PER_SQ_FT), false },
	[AMOUNT_G_M2] = { "g/m2", QUANTITY_RATE, 0.001, true },
	[AMOUNT_SQ_FT] = { "sq ft", QUANTITY_AREA, M2_PER_SQ_FT, false },
	[AMOUNT_SQ_YD] = { "sq yd", QUANTITY_AREA, 9 * M2_PER_SQ_FT, false },
	[AMOUNT_GAL_H] = { "gal/h", QUANTITY_FLOW, M3_PER_GALLON, false },
	[AMOUNT_L_H] = { "L/h", QUANTITY_FLOW, 0.001, true },
	[AMOUNT_M2] = { "m2", QUANTITY_AREA, 1, true },
	[AMOUNT_H_EACH] = { "h per each", QUANTITY_HOURS_EACH, 1, true },
	[AMOUNT_H_FT] = { "h per ft", QUANTITY_HOURS_LENGTH, 1 / M_PER_FT, false },
	[AMOUNT_H_M] = { "h per m", QUANTITY_HOURS_LENGTH, 1, true },
	[AMOUNT_H_SQ_FT] = { "h per sq-ft", QUANTITY_HOURS_AREA, 1 / M2_PER_SQ_FT, false },
	[AMOUNT_H_M2] = { "h per m2", QUANTITY_HOURS_AREA, 1, true },
	[AMOUNT_H_CU_FT] = { "h per cu-ft", QUANTITY_HOURS_VOLUME, 1 / M3_PER_CU_FT, false },
	[AMOUNT_H_M3] = { "h per m3", QUANTITY_HOURS_VOLUME, 1, true },
	[AMOUNT_GOODS_EACH] = { "each", QUANTITY_GOODS, 1, true },
	[AMOUNT_GOODS_FT] = { "ft", QUANTITY_GOODS, M_PER_FT, false },
	[AMOUNT_GOODS_M] = { "m", QUANTITY_GOODS, 1, true },
	[AMOUNT_GOODS_SQ_FT] = { "sq-ft", QUANTITY_GOODS, M2_PER_SQ_FT, false },
	[AMOUNT_GOODS_M2] = { "m2", QUANTITY_GOODS, 1, true },
	[AMOUNT_GOODS_CU_FT] = { "cu-ft", QUANTITY_GOODS, M3_PER_CU_FT, false },
	[AMOUNT_GOODS_M3] = { "m3", QUANTITY_GOODS, 1, true },
	[AMOUNT_GOODS_LB] = { "lb", QUANTITY_GOODS, KG_PER_LB, false },
	[AMOUNT_GOODS_KG] = { "kg", QUANTITY_GOODS, 1, true },
};

static const char *const examples[][2] = {
	[QUANTITY_DENSITY] = { "a density such as 135 lb/cu ft or 2150 kg/m3",
		"a density such as 2150 kg/m3" },
	[QUANTITY_VOLUME] = { "a volume such as 6 cu ft, 10 cu yd, 100 L or 6 m3",
		"a volume such as 100 L or 6 m3" },
	[QUANTITY_WEIGHT] = { "a weight such as 300 lb or 130 kg", "a weight such as 130 kg" },
	[QUANTITY_RATE] = { "a rate such as 6 lb/1000 sq ft or 30 g/m2",
		"a rate such as 30 g/m2" },
	[QUANTITY_AREA] = { "an area such as 10 sq ft, 50 sq yd or 1 m2", "an area such as 1 m2" },
	[QUANTITY_FLOW] = { "a flow such as 240 gal/h or 900 L/h", "a flow such as 900 L/h" },
	[QUANTITY_HOURS_EACH] = { "hours such as 0.05 h per each",
		"hours such as 0.05 h per each" },
	[QUANTITY_HOURS_LENGTH] = { "hours such as 0.1 h per ft or 0.3 h per m",
		"hours such as 0.3 h per m" },
	[QUANTITY_HOURS_AREA] = { "hours such as 0.02 h per sq-ft or 0.2 h per m2",
		"hours such as 0.2 h per m2" },
	[QUANTITY_HOURS_VOLUME] = { "hours such as 0.06 h per cu-ft or 2.2 h per m3",
		"hours such as 2.2 h per m3" },
	[QUANTITY_GOODS] = {
		"goods such as 24 each; or so many ft, m, sq-ft, m2, cu-ft, m3, lb, kg",
		"goods such as 24 each; or so many m, m2, m3, kg" },
};

bool amount_scan(struct scan *s, enum quantity quantity, enum units system, struct amount *out,
	struct diag *d)
{
	size_t start = s->at;

	scan_blanks(s);
	if (!scan_decimal(s, PLACES, &out->millionths))
		return scan_fail(s, start, d, "%s", examples[quantity][system]);
	for (int unit = 0; unit < AMOUNT_UNITS; unit++) {
		if (units[unit].quantity == quantity && scan_take_words(s, units[unit].word)) {
			out->unit = (enum amount_unit)unit;
			return true;
		}
	}
	return scan_fail(s, start, d, "%s", examples[quantity][system]);
}

void amount_write(struct text *out, const struct amount *amount)
{
	text_add_decimal(out, amount->millionths, PLACES);
	text_print(out, " %s", units[amount->unit].word);
}

void amount_write_range(struct text *out, enum quantity quantity, enum units system, int64_t least,
	int64_t most)
{
	struct text words = TEXT_EMPTY;

	for (int unit = 0; unit < AMOUNT_UNITS; unit++)
		if (units[unit].quantity == quantity &&
			(system != UNITS_METRIC || units[unit].is_metric))
			text_add_listed(&words, units[unit].word, unit + 1 == AMOUNT_UNITS ||
				units[unit + 1].quantity != quantity);
	text_add_decimal(out, least, PLACES);
	text_add(out, " to ");
	text_add_decimal(out, most, PLACES);
	text_print(out, " %s", words.bytes);
	text_fini(&words);
}

double amount_si(const struct amount *amount)
{
	return (double)amount->millionths / (double)MILLION * units[amount->unit].si;
}

enum quantity amount_quantity(enum amount_unit unit)
{
	return units[unit].quantity;
}

bool amount_equal(const struct amount *a, const struct amount *b)
{
	return a->millionths == b->millionths && a->unit == b->unit;
}
