#include "report/words/first_line.h"

#include <string.h>

/* A text read from the front, never past its end. */
struct view {
	const char *at, *end;
};

static bool take(struct view *view, const char *word)
{
	size_t length = strlen(word);

	if ((size_t)(view->end - view->at) < length || memcmp(view->at, word, length) != 0)
		return false;
	view->at += length;
	return true;
}

static size_t take_any(struct view *view, const char *set)
{
	const char *start = view->at;

	while (view->at < view->end && *view->at && strchr(set, *view->at))
		view->at++;
	return (size_t)(view->at - start);
}

/* The first line of a text that begins with the word, of any version. */
static bool is_text(struct view view, const char *word)
{
	bool is_comparison = strcmp(word, FIRST_LINE_COMPARE) == 0;

	if (!take(&view, word) || !take(&view, " "))
		return false;
	if (take_any(&view, "0123456789") == 0)
		return false;
	if (is_comparison && take(&view, ":"))
		return true;
	take_any(&view, "\r");
	return view.at == view.end || *view.at == '\n';
}

static bool take_after_blanks(struct view *view, const char *word)
{
	take_any(view, " \t\r\n");
	return take(view, word);
}

static bool is_json(struct view view)
{
	if (view.end - view.at > FIRST_LINE_WITHIN)
		view.end = view.at + FIRST_LINE_WITHIN;
	return take_after_blanks(&view, "{") && take_after_blanks(&view, "\"format\"") &&
		take_after_blanks(&view, ":") &&
		(take_after_blanks(&view, "\"" FIRST_LINE_JSON "\"") ||
		take_after_blanks(&view, "\"" FIRST_LINE_COMPARE_JSON "\"") ||
		take_after_blanks(&view, "\"" FIRST_LINE_SNAGS_JSON "\"") ||
		take_after_blanks(&view, "\"" FIRST_LINE_SUN_JSON "\""));
}

bool report_is_takeoff(const char *bytes, size_t length)
{
	struct view view = { bytes, bytes + length };

	return is_text(view, FIRST_LINE_TEXT) || is_text(view, FIRST_LINE_PLAN) ||
		is_text(view, FIRST_LINE_SETOUT) || is_text(view, FIRST_LINE_SNAGS) ||
		is_text(view, FIRST_LINE_SUN) ||
		is_text(view, FIRST_LINE_COMPARE) || is_json(view) ||
		take(&view, FIRST_LINE_DRAWING);
}

bool report_is_table(const char *bytes, size_t length)
{
	struct view view = { bytes, bytes + length };

	return take(&view, FIRST_LINE_CSV);
}
