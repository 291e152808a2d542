#include "report/json/json_snags.h"
#include "base/stop.h"
#include "prices/book_json.h"
#include "report/json/json_plot.h"
#include "report/json/json_rows.h"
#include "report/words/first_line.h"
#include "report/words/snag_words.h"

/* The card, the keywords of its attributes, and whether the plan may be drawn otherwise. */
static cJSON *cure_object(const struct report *report, const struct snag *snag)
{
	const struct cure *cure = snag_cure(snag);
	cJSON *object = cJSON_CreateObject(), *keywords = cJSON_CreateArray();

	for (int i = 0; i < cure->count; i++)
		cJSON_AddItemToArray(keywords,
			json_text(attribute_row(cure->attributes[i])->keyword));
	json_put(object, "card", json_text(snag_card(report, snag)));
	json_put(object, "attributes", keywords);
	json_put(object, "drawing", cJSON_CreateBool(cure->by_drawing));
	if (cure->by_levels)
		json_put(object, "levels", cJSON_CreateTrue());
	return object;
}

void json_snags(const struct report *report)
{
	const struct snag_list *snags = &report->takeoff->snags;
	struct json_rows rows = json_top_open(report->out, "snags");

	for (size_t i = 0; i < snags->count && !stop_asked(); i++) {
		const struct snag *snag = &snags->list[i];
		cJSON *row = cJSON_CreateObject();

		json_put(row, "code", json_text(snag_word(snag->code)));
		json_put(row, "region", json_region(report->takeoff, snag->region));
		json_put(row, "cell", json_place(snag->cell));
		if (snag->side >= 0) {
			json_put(row, "loop", json_count(snag->loop));
			json_put(row, "side", json_count(snag->side));
		}
		json_put(row, "text", json_text(snag_sentence(report, snag)));
		json_put(row, "source", json_text(snag_source(snag->code)));
		json_put(row, "cure", cure_object(report, snag));
		json_rows_add(&rows, row);
		arena_clear(report->words);
	}
	json_top_close(&rows);
}

void report_snags_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = { .out = out, .words = &words, .plot = plot,
		.takeoff = takeoff, .units = plot_units(plot) };

	json_start();
	sink_print(out, "{\n  \"format\": \"%s\", \"version\": %d", FIRST_LINE_SNAGS_JSON,
		FIRST_LINE_VERSION);
	json_plot(&report);
	json_snags(&report);
	sink_add(out, "\n}\n");
	arena_clear(&words);
}
