/* Plants. */
#include "plot/attribute_rows.h"

static const char *const pattern_words[] = { "triangular", "square", NULL };
static const char *const light_words[] = { "full", "part", "part-shade", "shade", NULL };
static const char *const month_words[] = { "january", "february", "march", "april", "may", "june",
	"july", "august", "september", "october", "november", "december", NULL };

#define AT(name) [PLANT_##name - PLANT_SPACING]

static const struct attribute_row rows[] = {
	AT(SPACING) = { "spacing", "Spacing",
		"From the middle of one to the middle of the next.",
		LENGTH(INCHES(1), METRES(10)), IS_LENGTH(INCHES(12)),
		.metric = IS_LENGTH(MM(300)), .subject = SUBJECT_PLANTS },
	AT(SPREAD) = { "spread", "Spread, grown",
		"How wide it is when it is grown.",
		LENGTH(INCHES(1), METRES(30)),
		.derived = "as wide as its spacing", .brief = "its spacing",
		.subject = SUBJECT_PLANTS },
	AT(HEIGHT) = { "height", "Height, grown",
		"How tall it is when it is grown.",
		LENGTH(INCHES(1), METRES(30)), .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(PATTERN) = { "pattern", "Pattern",
		"How they stand where they fill a bed: rows shifted by half a spacing, or square.",
		CHOICE(pattern_words), IS_NUMBER(PATTERN_TRIANGULAR), .subject = SUBJECT_PLANTS },
	AT(SUN) = { "sun", "Sun it needs",
		"The least light it thrives in; checked where the plot tells its latitude.",
		CHOICE(light_words), .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(SOIL) = { "soil", "Soil it needs",
		"How deep the soil must be for it.",
		DEPTH, .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(POT) = { "pot", "Pot, width",
		"Across the pot it is bought in.",
		LENGTH(INCHES(1), METRES(2)), .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(FROM) = { "plant-from", "Planted from",
		"The first month in which it is planted.",
		CHOICE(month_words), .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(UNTIL) = { "plant-until", "Planted until",
		"The last month in which it is planted.",
		CHOICE(month_words), .derived = "not told", .subject = SUBJECT_PLANTS },
	AT(PRICE) = { "price", "Price of one",
		"What one costs, in the currency of the price book; it goes before a quote there.",
		DECIMAL(0, 1000000 * MILLION), .derived = "not told", .subject = SUBJECT_PLANTS },
};

const struct attribute_table plant_attributes = ATTRIBUTE_TABLE("plant", PLANT_SPACING, rows);
