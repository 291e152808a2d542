#include "editor/acts/act_groups.h"
#include "base/number.h"

/* A page that is turned to is there to be seen. */
static void turn_to(struct editor *editor, int page)
{
	editor->page = page;
	editor->page_top = 0;
	if (editor->panel == PANEL_HIDDEN)
		editor->panel = PANEL_NORMAL;
}

static void act_turn(struct editor *editor, int by)
{
	turn_to(editor, (editor->page + by + pages_count()) % pages_count());
}

static void act_pages(struct editor *editor)
{
	const char *names[PAGES_MOST];
	struct question question = { .text = "Which page?", .answers = names,
		.count = pages_count(), .first = editor->page };
	int page;

	for (int i = 0; i < question.count; i++)
		names[i] = page_name(i);
	page = editor->asker->choose(editor->asker, &question);
	if (page != ANSWER_NONE)
		turn_to(editor, page);
}

/* Normal, wide, hidden, and normal again. */
static void act_panel(struct editor *editor)
{
	editor->panel = editor->panel == PANEL_HIDDEN ? PANEL_NORMAL : editor->panel + 1;
	if (editor->panel == PANEL_HIDDEN)
		editor_say(editor, "The panel is hidden; %s brings it back.",
			acts_key(ACT_NEXT_PAGE));
	else
		editor_say(editor, "The panel is %s.",
			editor->panel == PANEL_WIDE ? "wide" : "back");
}

/* By what is in view, but for a line that stays. How far down there is something to see depends on
 * the screen, which holds it to that. */
static void act_roll(struct editor *editor, int way)
{
	editor->page_top = most(editor->page_top + way * most(editor->page_rows - 1, 1), 0);
}

static const struct act acts[] = {
	{ .id = ACT_NEXT_PAGE, .keys = ONE_KEY(PRESS_TAB), .key_name = "Tab", .name = "Next page",
		.wish = "see the next page of figures",
		.words = "page panel quantities", .hints = { [STATE_REST] = "page" }, .rank = 3,
		.run_with = act_turn, .with = 1 },
	{ .id = ACT_PAGE_BEFORE, .keys = ONE_KEY(PRESS_BACK_TAB), .key_name = "Shift-Tab",
		.name = "Page before", .wish = "see the page before",
		.words = "panel previous", .run_with = act_turn,
		.with = -1 },
	{ .id = ACT_PAGES, .keys = ONE_KEY(';'), .key_name = ";", .name = "Pages",
		.wish = "pick a page",
		.words = "snag warning problem price cost areas walls stone soil panel",
		.run = act_pages },
	{ .id = ACT_PANEL, .key_name = "!", .name = "Panel width",
		.wish = "hide the panel, or widen it",
		.words = "broad narrow", .run = act_panel },
	{ .id = ACT_FURTHER, .keys = ONE_KEY(')'), .key_name = ")", .name = "Further down the page",
		.wish = "see the rest of a long page",
		.words = "scroll more", .run_with = act_roll,
		.with = 1 },
	{ .id = ACT_BACK, .keys = ONE_KEY('('), .key_name = "(", .name = "Back up the page",
		.wish = "see its start again",
		.words = "scroll less", .run_with = act_roll, .with = -1 },
};
const struct act_group acts_of_page = ACT_GROUP("Figures", acts);
