#include "report/json/json_plot.h"
#include "report/json/json_value.h"

/* A text that a plot need not have. */
static void put_told(cJSON *object, const char *key, const struct value *value)
{
	if (value->set)
		json_put(object, key, json_text(value->as.text));
}

void json_plot(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	const struct value *title = block_value(&report->plot->details.head, HEAD_TITLE);
	cJSON *object = cJSON_CreateObject();

	json_put(object, "title", json_text(title->set ? title->as.text : ""));
	json_put(object, "units", json_text(report->units == UNITS_METRIC ? "metric" : "imperial"));
	json_put(object, "cell_m", json_length(survey->cell));
	json_put(object, "columns", json_count(survey->columns));
	json_put(object, "rows", json_count(survey->rows));
	json_put(object, "width_m", json_length(survey->columns * survey->cell));
	json_put(object, "height_m", json_length(survey->rows * survey->cell));
	put_told(object, "notice", block_value(&report->plot->details.head, HEAD_NOTICE));
	put_told(object, "notice_end", block_value(&report->plot->details.head, HEAD_NOTICE_END));
	sink_add(report->out, ",\n  \"plot\": ");
	json_print(report->out, object);
}
