#include "report/text/paged.h"
#include "report/words/page.h"

#include <string.h>

static void turn(struct paged_sink *paged)
{
	sink_add(paged->out, "\f");
	paged->row = 0;
}

enum { HEAD_LINES = 2 }; /* a blank one and the rule */

static void go_on(struct paged_sink *paged)
{
	struct text title = TEXT_EMPTY;

	turn(paged);
	text_print(&title, "%s, page %d", paged->title.bytes, ++paged->page);
	page_rule(paged->out, title.bytes, paged->of.bytes);
	paged->row = HEAD_LINES;
	text_fini(&title);
}

/* Whether the block is to begin a page: where this one is nearly full at its blank line, or has no
 * room for what a whole page has room for. */
static bool is_for_next_page(const struct paged_sink *paged)
{
	bool is_parted = paged->block.bytes[0] == '\n';

	return !paged->is_long && paged->row > HEAD_LINES &&
		((is_parted && paged->row >= PAGE_LINES_SOFT) ||
		(paged->row + paged->lines > PAGE_LINES_MOST &&
		paged->lines - is_parted <= PAGE_LINES_MOST - HEAD_LINES));
}

/* The blank line that it begins with falls away at the top of a page. */
static void end_block(struct paged_sink *paged)
{
	const char *line = paged->block.bytes, *end;

	if (is_for_next_page(paged)) {
		go_on(paged);
		line += *line == '\n';
	}
	for (; *line; line = end + 1) {
		end = strchr(line, '\n');
		if (paged->row >= PAGE_LINES_MOST)
			go_on(paged);
		sink_add_bytes(paged->out, line, (size_t)(end + 1 - line));
		paged->row++;
	}
	text_clear(&paged->block);
	paged->lines = 0;
}

/* A block begins with a blank line and has none besides. One that no page has room for is not
 * held. */
static void end_line(struct paged_sink *paged)
{
	if (paged->line.length == 0) {
		end_block(paged);
		paged->is_long = false;
	}
	text_print(&paged->block, "%s\n", paged->line.bytes);
	text_clear(&paged->line);
	paged->lines++;
	if (paged->is_long || paged->lines > PAGE_LINES_MOST) {
		end_block(paged);
		paged->is_long = true;
	}
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
		.block = TEXT_EMPTY, .title = TEXT_EMPTY, .of = TEXT_EMPTY, .page = 1 };
}

void paged_part(struct paged_sink *paged, const char *title, const char *of)
{
	end_block(paged);
	paged->is_long = false;
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
	end_block(paged);
	text_fini(&paged->line);
	text_fini(&paged->block);
	text_fini(&paged->title);
	text_fini(&paged->of);
}
