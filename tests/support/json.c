#include "support/json.h"
#include "report/json/json.h"

#include <check.h>

cJSON *json_of(struct garden *garden, struct text *text)
{
	struct text_sink sink = text_sink(text);
	const char *end = NULL;
	cJSON *root;

	text_clear(text);
	garden_count(garden);
	report_json(&sink.sink, &garden->plot, &garden->takeoff);
	root = cJSON_ParseWithOpts(text->bytes, &end, true);
	ck_assert_msg(root, "no JSON from here: %.60s", end ? end : "");
	return root;
}

const cJSON *json_get(const cJSON *object, const char *key)
{
	const cJSON *value = cJSON_GetObjectItemCaseSensitive(object, key);

	ck_assert_msg(value, "no key %s", key);
	return value;
}
