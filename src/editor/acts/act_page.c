#include "editor/acts/acts.h"

/* A page that is turned to is there to be seen. */
static void turn_to(struct editor *editor, int page)
{
	editor->page = page;
	editor->page_top = 0;
	if (editor->panel == PANEL_HIDDEN)
		editor->panel = PANEL_NORMAL;
}

void act_next_page(struct editor *editor, int key)
{
	(void)key;
	turn_to(editor, (editor->page + 1) % pages_count());
}

void act_page_before(struct editor *editor, int key)
{
	(void)key;
	turn_to(editor, (editor->page + pages_count() - 1) % pages_count());
}

void act_pages(struct editor *editor, int key)
{
	const char *names[PAGES_MOST];
	struct question question = { .text = "Which page?", .answers = names, .count = pages_count(),
		.first = editor->page };
	int page;

	(void)key;
	for (int i = 0; i < question.count; i++)
		names[i] = page_name(i);
	page = editor->asker->choose(editor->asker, &question);
	if (page != ANSWER_NONE)
		turn_to(editor, page);
}

enum { LINES_A_TURN = 6 };

/* How far down there is something to see depends on the screen, which holds it to that. */
void act_further(struct editor *editor, int key)
{
	(void)key;
	editor->page_top += LINES_A_TURN;
}

void act_back(struct editor *editor, int key)
{
	(void)key;
	editor->page_top = editor->page_top > LINES_A_TURN ? editor->page_top - LINES_A_TURN : 0;
}
