#include "editor/acts/act_groups.h"
#include "base/number.h"
#include "editor/acts/shared.h"

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

static const char *panel_state(const struct editor *editor)
{
	static const char *const words[] = { [PANEL_NORMAL] = "normal", [PANEL_WIDE] = "wide",
		[PANEL_HIDDEN] = "hidden" };

	return words[editor->panel];
}

/* By what is in view, but for a line that stays. How far down there is something to see depends on
 * the screen, which holds it to that. */
static void act_roll(struct editor *editor, int way)
{
	editor->page_top = most(editor->page_top + way * most(editor->page_rows - 1, 1), 0);
}

/* ---- Where the page leads to ----------------------------------------------------------------- */

struct counting {
	struct task task; /* first */
	struct editor *editor;
};

static bool count(struct task *task)
{
	return editor_refresh(((struct counting *)task)->editor);
}

bool act_count(struct editor *editor)
{
	struct counting counting = { { "Counting", count }, editor };
	bool is_counted = editor->asker->await(editor->asker, &counting.task);

	if (!is_counted)
		editor_say(editor, "Given up: it is not counted yet.");
	return is_counted;
}

/* The lines of the page that lead to a place. */
struct leads {
	struct arena arena;
	struct question question;
	const char **answers, **notes;
	const struct line **lines;
};

static void lead_add(struct leads *leads, const struct line *line, const struct report *report)
{
	int at = leads->question.count++;

	leads->lines[at] = line;
	leads->answers[at] = line->label;
	leads->notes[at] = line->kind == LINE_HEADING ? plain_corner(report, line->at) : "";
}

static void leads_find(struct leads *leads, const struct editor *editor)
{
	const struct page *page = &editor->pages.pages[editor->page];
	struct report report = editor_report(editor, &leads->arena);

	leads->question.answers = leads->answers = arena_new(&leads->arena, page->count,
		sizeof *leads->answers);
	leads->question.notes = leads->notes = arena_new(&leads->arena, page->count,
		sizeof *leads->notes);
	leads->lines = arena_new(&leads->arena, page->count, sizeof *leads->lines);
	for (size_t i = 0; i < page->count; i++)
		if (page->lines[i].at.x >= 0)
			lead_add(leads, &page->lines[i], &report);
}

static void act_go_there(struct editor *editor)
{
	const char *name = page_name(editor->page);
	struct leads leads = { .arena = ARENA_EMPTY };
	int answer = ANSWER_NONE;

	if (!act_count(editor))
		return;
	leads_find(&leads, editor);
	leads.question.text = arena_print(&leads.arena, "The page %s: go where?", name);
	if (leads.question.count)
		answer = editor->asker->choose(editor->asker, &leads.question);
	else
		editor_say(editor, "The page %s names no place on the plan. %s picks another page.",
			name, acts_key(ACT_PAGES));
	if (answer != ANSWER_NONE) {
		editor->cursor = ground_nearest(&editor->plot->ground, leads.lines[answer]->at);
		editor_say(editor, "%s", leads.answers[answer]);
	}
	arena_clear(&leads.arena);
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
		.words = "snag warning problem price cost areas walls stone soil changed panel "
			"plants planting month watering drip sun",
		.run = act_pages },
	{ .id = ACT_PANEL, .key_name = "!", .name = "Panel width",
		.wish = "hide the panel, or make it wide", .state = panel_state,
		.words = "broad narrow", .run = act_panel },
	{ .id = ACT_FURTHER, .keys = ONE_KEY(')'), .key_name = ")", .name = "Further down the page",
		.wish = "see the rest of a long page",
		.words = "scroll more", .run_with = act_roll,
		.with = 1 },
	{ .id = ACT_BACK, .keys = ONE_KEY('('), .key_name = "(", .name = "Back up the page",
		.wish = "see its start again",
		.words = "scroll less", .run_with = act_roll, .with = -1 },
	{ .id = ACT_GO_THERE, .key_name = "!", .name = "Go there",
		.wish = "go to what the page tells of",
		.words = "goto jump place bed wall fence page", .run = act_go_there },
};
const struct act_group acts_of_page = ACT_GROUP("Figures", acts);
