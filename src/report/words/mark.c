#include "report/words/mark.h"

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

static bool is_one_of(char c, const char *set)
{
	return c != '\0' && strchr(set, c) != NULL;
}

static size_t take_any(struct view *view, const char *set)
{
	const char *start = view->at;

	while (view->at < view->end && is_one_of(*view->at, set))
		view->at++;
	return (size_t)(view->at - start);
}

/* The first line of a text, of any version. */
static bool is_text(struct view view)
{
	if (!take(&view, MARK_TEXT " ") || take_any(&view, "0123456789") == 0)
		return false;
	take_any(&view, "\r");
	return view.at == view.end || *view.at == '\n';
}

static bool is_json(struct view view)
{
	static const char blank[] = " \t\r\n";

	if (view.end - view.at > MARK_JSON_WITHIN)
		view.end = view.at + MARK_JSON_WITHIN;
	take_any(&view, blank);
	if (!take(&view, "{"))
		return false;
	take_any(&view, blank);
	if (!take(&view, "\"format\""))
		return false;
	take_any(&view, blank);
	if (!take(&view, ":"))
		return false;
	take_any(&view, blank);
	return take(&view, "\"" MARK_JSON "\"");
}

bool report_is_takeoff(const char *bytes, size_t length)
{
	struct view view = { bytes, bytes + length };

	return is_text(view) || is_json(view);
}
