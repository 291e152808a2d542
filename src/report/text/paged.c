#include "report/text/paged.h"
#include "report/words/page.h"

#include <string.h>

static void turn(struct paged_sink *paged)
{
	sink_add(paged->out, "\f");
	paged->row = 0;
}

/* A rule takes a blank line and its own. */
static void go_on(struct paged_sink *paged)
{
	struct text title = TEXT_EMPTY;

	turn(paged);
	text_print(&title, "%s, page %d", paged->title.bytes, ++paged->page);
	page_rule(paged->out, title.bytes, paged->of.bytes);
	paged->row = 2;
	text_fini(&title);
}

/* A blank line where a page is nearly full is the place to turn it. */
static void end_line(struct paged_sink *paged)
{
	bool is_blank = paged->line.length == 0;

	if (paged->row >= PAGE_LINES_MOST || (is_blank && paged->row >= PAGE_LINES_SOFT)) {
		go_on(paged);
		if (is_blank)
			return;
	}
	sink_print(paged->out, "%s\n", paged->line.bytes);
	text_clear(&paged->line);
	paged->row++;
}

static void write_paged(struct sink *sink, const char *bytes, size_t length)
{
	struct paged_sink *paged = (struct paged_sink *)sink;

	for (const char *end; (end = memchr(bytes, '\n', length)) != NULL;) {
		size_t taken = (size_t)(end - bytes);

		text_add_bytes(&paged->line, bytes, taken);
		end_line(paged);
		bytes += taken + 1;
		length -= taken + 1;
	}
	text_add_bytes(&paged->line, bytes, length);
}

struct paged_sink paged_sink(struct sink *out)
{
	return (struct paged_sink){ .sink = { write_paged }, .out = out, .line = TEXT_EMPTY,
		.title = TEXT_EMPTY, .of = TEXT_EMPTY, .page = 1 };
}

void paged_part(struct paged_sink *paged, const char *title, const char *of)
{
	text_clear(&paged->title);
	text_clear(&paged->of);
	text_add(&paged->title, title);
	text_add(&paged->of, of);
	if (paged->row > 1)
		turn(paged);
	paged->page = 1;
}

void paged_fini(struct paged_sink *paged)
{
	text_fini(&paged->line);
	text_fini(&paged->title);
	text_fini(&paged->of);
}
