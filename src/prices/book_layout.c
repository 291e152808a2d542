#include "prices/book_layout.h"

#include <string.h>

/* The book itself and its lists are never on one line. */
enum { LINE_MOST = 92, INDENT = 2, OPEN_LEVELS = 2 };

static bool is_container(const cJSON *value)
{
	return cJSON_IsObject(value) || cJSON_IsArray(value);
}

static bool is_of_money(const cJSON *value)
{
	return value->string && (strcmp(value->string, "price") == 0 ||
		strcmp(value->string, "delivery") == 0);
}

void book_add_value(struct text *out, const cJSON *value)
{
	char *words;
	money amount;

	if (is_of_money(value) && cJSON_IsNumber(value) &&
	    book_money(value->valuedouble, &amount)) {
		text_print(out, "%lld.%02d", (long long)(amount / 100), (int)(amount % 100));
		return;
	}
	words = cJSON_PrintUnformatted(value);
	text_add(out, words);
	cJSON_free(words);
}

static void add_key(struct text *out, const cJSON *value)
{
	cJSON *key;

	if (!value->string)
		return;
	key = cJSON_CreateStringReference(value->string);
	book_add_value(out, key);
	text_add(out, ": ");
	cJSON_Delete(key);
}

static void add_on_one_line(struct text *out, const cJSON *value)
{
	const char *ends = cJSON_IsObject(value) ? "{}" : "[]";
	const cJSON *child;

	add_key(out, value);
	if (!is_container(value)) {
		book_add_value(out, value);
		return;
	}
	text_print(out, "%c", ends[0]);
	cJSON_ArrayForEach(child, value) {
		text_add(out, child == value->child ? " " : ", ");
		add_on_one_line(out, child);
	}
	text_print(out, "%s%c", value->child ? " " : "", ends[1]);
}

/* level: how many containers it is in. */
static bool is_open(const cJSON *value, int level)
{
	struct text line = TEXT_EMPTY;
	bool is_long;

	if (!is_container(value) || !value->child)
		return false;
	if (level < OPEN_LEVELS && (level == 0 || is_container(value->child)))
		return true;
	add_on_one_line(&line, value);
	is_long = line.length + (size_t)(level * INDENT) > LINE_MOST;
	text_fini(&line);
	return is_long;
}

static void lay_out(struct text *out, const cJSON *value, int level)
{
	const char *ends = cJSON_IsObject(value) ? "{}" : "[]";
	const cJSON *child;

	if (!is_open(value, level)) {
		add_on_one_line(out, value);
		return;
	}
	add_key(out, value);
	text_print(out, "%c\n", ends[0]);
	cJSON_ArrayForEach(child, value) {
		text_add_repeat(out, ' ', (size_t)((level + 1) * INDENT));
		lay_out(out, child, level + 1);
		text_add(out, child->next ? ",\n" : "\n");
	}
	text_add_repeat(out, ' ', (size_t)(level * INDENT));
	text_print(out, "%c", ends[1]);
}

void book_lay_out(struct text *out, const cJSON *tree)
{
	lay_out(out, tree, 0);
	text_add(out, "\n");
}
