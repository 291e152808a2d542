/* The program at a terminal: every act that has a name, by its key and by the list of acts, with
 * the same outcome. */

#include "support/runner.h"
#include "support/table.h"

#include "editor/acts/acts.h"

#include <string.h>

/* One act on the court, which has 14 by 8 cells of 1 ft, is mirrored left-right, and has b in
 * hand. */
struct way {
	const char *name;
	/* keys before it, and what is there once they have worked; may be NULL */
	const char *first, *ready;
	const char *keyed;         /* keys that do it, and answer what it asks */
	const char *listed;        /* the answers alone, after it was picked by name; may be NULL */
	const char *shown;         /* what the screen has afterwards and did not have before */
	/* the same after picking what has several keys: it is explained; or NULL */
	const char *told;
	const char *plot;          /* the great court, 200 by 200 cells, instead; or NULL */
};

/* Marks the left bed, 5 by 3 cells from 1,1. */
#define MARK "right down enter right x4 down x2 enter M a r k enter"

#define GREAT "great-court.plot"

static const struct way ways[] = {
	{ "Move", NULL, NULL, "right", NULL, "1 ft across, 0 in down",
		"arrows: go to another cell.", NULL },
	{ "Count steps", NULL, NULL, "1 2", NULL, "12 steps: 12 ft   court.plot",
		"digits: go several steps at once.", NULL },
	{ "Go on to other ground", "right down", "1 ft across, 1 ft down", "ctrl-right", NULL,
		"6 ft across, 1 ft down", "Ctrl-arrows: go to where the ground changes.", NULL },
	{ "Step", NULL, NULL, "! S e t space h o w enter 2 space f t enter", "2 space f t enter",
		"arrows move 2 ft", NULL, NULL },
	{ "Go to an edge", NULL, NULL, "end", NULL, "13 ft across, 0 in down",
		"Home...PgDn: go left, right, to top, bottom.", NULL },
	{ "Go to a place", NULL, NULL, "@ 3 space f t enter enter", "3 space f t enter enter",
		"3 ft across, 0 in down", NULL, NULL },
	{ "Farther", NULL, NULL, "/", NULL, "One column a cell.", NULL, GREAT },
	{ "Nearer", "/", "One column a cell.", "\\", NULL, "Two columns a cell.", NULL, GREAT },
	{ "Overview", NULL, NULL, "_", NULL, "A character stands for 6 x 12 cells", NULL, GREAT },
	{ "Centre", NULL, NULL, "! C e n t r e enter", NULL, "as near the middle", NULL, GREAT },
	{ "Measure", NULL, NULL, "\"", NULL, "The rulers measure what the cursor is in.", NULL,
		NULL },
	{ "Scroll", NULL, NULL, "shift-right", NULL, "8 ft across, 0 in down",
		"Shift-arrows: see what lies beside.", GREAT },
	{ "Take in hand", NULL, NULL, "p", NULL, "In hand: p Crushed stone.",
		"letter, .: take in hand what will be laid.", NULL },
	{ "Lay", NULL, NULL, "space", NULL, "*b Raised bed         32.0", NULL, NULL },
	{ "Lift", "right down", "1 ft across, 1 ft down", "delete", NULL,
		"*b Raised bed         28.0", NULL, NULL },
	{ "Trail", NULL, NULL, "= right", "right", "*b Raised bed         34.0", NULL, NULL },
	{ "Peg", NULL, NULL, "enter", NULL, "Pegged. Go to the opposite corner", NULL, NULL },
	{ "Fill", "enter right", "The rectangle: 2 ft x 1 ft", "enter enter", NULL,
		"*b Raised bed         34.0", NULL, NULL },
	{ "Frame", "p right down enter right x4 down x2", "The rectangle: 5 ft x 3 ft",
		"enter F r a m e enter enter", "enter", "A thickness of 1 ft: 1 cell.", NULL,
		NULL },
	{ "Straight run", "enter right", "The rectangle: 2 ft x 1 ft",
		"enter S t r a i g h t enter enter",
		"enter", "A width of 1 ft: 1 cell.", NULL, NULL },
	{ "Bend the run", "enter right", "The rectangle: 2 ft x 1 ft", "enter B e n d enter", NULL,
		"It bends here.", NULL, NULL },
	{ "Lay a round disc", "p right x6 down x3", "6 ft across, 3 ft down",
		"! d i s c enter 3 space f t enter", "3 space f t enter", "About this middle it is",
		NULL, NULL },
	{ "Round corners", "p right down enter right x4 down x2", "The rectangle: 5 ft x 3 ft",
		"enter R o u n d enter enter", "enter", "A radius of 1 ft: 1 cell.", NULL, NULL },
	{ "Flood", NULL, NULL, "*", NULL, "*. Open ground         0.0", NULL, NULL },
	{ "Mark", "enter right", "The rectangle: 2 ft x 1 ft", "enter M a r k enter", NULL,
		"Marked: 2 ft x 1 ft. Go on", NULL, NULL },
	{ "Mark this region", "right down", "1 ft across, 1 ft down",
		"! M a r k space t h i s enter", NULL, "Marked: 5 ft x 3 ft. Go on", NULL, NULL },
	{ "Swap a letter", MARK, "Go on; Space stamps",
		"enter S w a p enter T u r f enter", "T u r f enter",
		"l Turf for b Raised bed: 30 cells.", NULL, NULL },
	{ "Stamp what is marked", MARK " down x4", "1 ft across, 5 ft down", "space", NULL,
		"Stamped; it is still carried", NULL, NULL },
	{ "Move what is marked", MARK " down x4", "1 ft across, 5 ft down", "enter enter", NULL,
		"Moved; Backspace takes it back.", NULL, NULL },
	{ "Turn what is marked", MARK, "Go on; Space stamps", "}", NULL,
		"Turned a quarter clockwise: 3 ft x 5 ft.", NULL, NULL },
	{ "Flip across", MARK, "Go on; Space stamps", "[", NULL, "Flipped, left for right", NULL,
		NULL },
	{ "Flip down", MARK, "Go on; Space stamps", "]", NULL, "Flipped, top for bottom", NULL,
		NULL },
	{ "Lift what is marked", MARK, "Go on; Space stamps", "delete", NULL,
		"Lifted, and still carried", NULL, NULL },
	{ "Fence", NULL, NULL, ":", NULL, "Along this cell, 1 ft x", NULL, NULL },
	{ "Lay a fence", "right", "1 ft across", ": L a y enter T o p enter", "T o p enter",
		"Pickets: 2 ft laid;", NULL, NULL },
	{ "Set a gate", "down x3", "0 in across, 3 ft down", ": S e t enter", NULL,
		"Pickets: 2 gates set, each 4 ft from post to post.", NULL, NULL },
	{ "Take out the fence", "down x3", "0 in across, 3 ft down",
		": o u t space f e n c e enter", NULL,
		"Pickets: 2 ft taken out;", NULL, NULL },
	{ "Take out the gate", "down x7 right x6", "6 ft across, 7 ft down",
		": o u t space g a t e enter", NULL,
		"Pickets: 1 gate taken out;", NULL, NULL },
	{ "Fence the whole plan", NULL, NULL, ": w h o l e enter", NULL,
		"Pickets: 14 ft laid;", NULL, NULL },
	{ "Lay a service line", "right enter right x3", "The rectangle: 4 ft x 1 ft",
		"enter s e r v i c e enter enter L a m p pagedown enter",
		"enter L a m p pagedown enter", "Lamp: a line of 4 ft; Backspace takes it back.",
		NULL, NULL },
	{ "Keep a tree", NULL, NULL, "! t r e e enter P e a r down x3 2 pagedown enter",
		"P e a r down x3 2 pagedown enter",
		"Kept: Pear, 2 ft about 0 in across, 0 in down;", NULL, NULL },
	{ "Keep a wall or cover", NULL, NULL, "! c o v e r enter W a l l pagedown enter",
		"W a l l pagedown enter", "Kept: Wall, 1 ft x 1 ft;", NULL, NULL },
	{ "House", NULL, NULL, "! H o u s e enter N o . 4 pagedown enter",
		"N o . 4 pagedown enter", "House: No.4, 1 ft x 1 ft;", NULL, NULL },
	{ "Shade", NULL, NULL, "! s h a d o w enter L i m e s down x5 9 pagedown enter",
		"L i m e s down x5 9 pagedown enter", "Shade: Limes, 1 ft x 1 ft;", NULL, NULL },
	{ "Tie to a fixed point", NULL, NULL,
		"! T i e enter down x2 P i e r down 9 enter", "down x2 P i e r down 9 enter",
		"Tied: 0 in across, 0 in down to Pier, 9 ft;", NULL, NULL },
	{ "Deliveries here", NULL, NULL, "! d e l i v e r y enter", NULL,
		"Deliveries are put down at 0 in across", NULL, NULL },
	{ "Tap here", NULL, NULL, "! f a u c e t enter", NULL,
		"Water comes from 0 in across", NULL, NULL },
	{ "Remove what is around", "! d e l i v e r y enter", "Deliveries are put down at",
		"! R e m o v e space w h a t enter enter", "enter", "Removed: Where deliveries",
		NULL, NULL },
	{ "New plant", NULL, NULL, "! N e w space p l a n t enter R o s e pagedown enter",
		"R o s e pagedown enter", "In hand: a Rose.", NULL, NULL },
	{ "Plant a drift",
		"! N e w space p l a n t enter R o s e pagedown enter right down",
		"1 ft across, 1 ft down", "! P l a n t space a space d enter enter enter",
		"enter enter", "a Rose fills it;", NULL, NULL },
	{ "Lift a drift", NULL, NULL, "! L i f t space a space d r enter", NULL,
		"There is no drift yet.", NULL, NULL },
	{ "Measure levels", NULL, NULL, "! M e a s u r e space l enter enter", "enter",
		"set, next", NULL, NULL },
	{ "Finished ground", NULL, NULL, "! F i n i s h e d enter down x2 2 pagedown enter",
		"down x2 2 pagedown enter", "The finished ground is set;", NULL, NULL },
	{ "Show levels", NULL, NULL, "! S h o w space l e v enter", NULL,
		"No levels are measured yet", NULL, NULL },
	{ "Show hours of sun", NULL, NULL, "! h o u r s enter", NULL, "No latitude is told.",
		NULL, NULL },
	{ "Shadows of a day", NULL, NULL, "! S h a d o w s enter", NULL, "No latitude is told.",
		NULL, NULL },
	{ "Take back", "space", "not saved", "backspace", NULL,
		"Taken back: Lay (b Raised bed); no more can be.", NULL, NULL },
	{ "Put back", "space backspace", "Taken back:", "+", NULL,
		"Put back: Lay (b Raised bed); no more can be.", NULL, NULL },
	{ "Mirror left-right", NULL, NULL, "|", NULL, "The mirror is off.", NULL, NULL },
	{ "Mirror top-bottom", NULL, NULL, "-", NULL, "Mirror four-way: ", NULL, NULL },
	{ "Mirror half-turn", NULL, NULL, "%", NULL, "Mirror half-turn: ", NULL, NULL },
	{ "Fold", NULL, NULL, "&", NULL, "Folded", NULL, NULL },
	{ "Next fault", NULL, NULL, "'", NULL, "1 fault, here: p Crushed stone", NULL, NULL },
	{ "Axis", "right x6", "6 ft across", "! A x i s enter enter", "enter",
		"The upright axis stands here. Now ", NULL, NULL },
	{ "Next page", NULL, NULL, "tab", NULL, "Edges       ", NULL, NULL },
	{ "Page before", "tab", "Edges       ", "shift-tab", NULL, "Areas       ", NULL, NULL },
	{ "Pages", NULL, NULL, "; W a l l s enter", "W a l l s enter",
		"Laid whole", NULL, NULL },
	{ "Panel width", NULL, NULL, "! P a n e l space w enter", NULL, "The panel is wide.",
		NULL, NULL },
	{ "Further down the page", "; W a l l s enter", "more below", ")", NULL,
		"more above", NULL, NULL },
	{ "Back up the page", "; W a l l s enter )", "more above", "(", NULL,
		"more below", NULL, NULL },
	{ "Go there", "tab tab", "Beds        ", "! t h e r e enter B 2 enter", "B 2 enter",
		"8 ft across, 1 ft down", NULL, NULL },
	{ "Next snag", NULL, NULL, ",", NULL, "Snag 6 of 10: A post's hole", NULL, NULL },
	{ "Cards", NULL, NULL, "#", NULL, "Which card?", NULL, NULL },
	{ "Grow or crop", NULL, NULL, "! G r o w enter", NULL,
		"The plan is 14 ft x 8 ft. Grow or crop it:", NULL, NULL },
	{ "Crop to the mark", MARK, "Go on; Space stamps", "! G r o w enter m a r k enter", NULL,
		"15 cells of bed, 17 of", NULL, NULL },
	{ "Put in a strip", "right x3 down x2", "3 ft across, 2 ft down",
		"! P u t space i n enter enter 1 space f t enter", "enter 1 space f t enter",
		"The plan is 14 ft x 9 ft now, 14 x 9 cells", NULL, NULL },
	{ "Take out a strip", "right x3 down x2", "3 ft across, 2 ft down",
		"! T a k e space o u t space a enter enter 1 space f t enter",
		"enter 1 space f t enter", "The plan is 14 ft x 7 ft now, 14 x 7 cells", NULL,
		NULL },
	{ "Name this place", "right down", "1 ft across, 1 ft down",
		"! N a m e enter S a g e enter",
		"S a g e enter", "Named: Sage.", NULL, NULL },
	{ "Files", NULL, NULL, ">", NULL, "Price book", NULL, NULL },
	{ "Save", NULL, NULL, "> >", NULL, "Saved in ", NULL, NULL },
	{ "Save as another file", NULL, NULL, "! a n o t h e r enter enter", "enter",
		"court-2.plot, saved", NULL, NULL },
	{ "Write a copy", NULL, NULL, "! c o p y enter enter", "enter", "A copy is in ",
		NULL, NULL },
	{ "Takeoff", NULL, NULL, "> t a k enter enter enter", "enter enter",
		"Takeoff written to ",
		NULL, NULL },
	{ "Drawing", NULL, NULL, "> d r a w i n g enter enter x9", "enter x9",
		"Drawing written to ", NULL, NULL },
	{ "Price book", NULL, NULL, "> p r i c e enter", NULL, "set it", NULL, NULL },
	{ "Price of an item", NULL, NULL, "! P r i c e space o f enter pagedown enter",
		"pagedown enter", "Which price?", NULL, NULL },
	{ "Leave", "space", "not saved", "<", NULL, "Leave without saving", NULL, NULL },
	{ "Mouse", NULL, NULL, "! M o u s e enter", NULL, "Mouse on", NULL, NULL },
	{ "One step back", "=", "end trail", "escape", NULL, "Space lay  = trail", NULL, NULL },
	{ "All acts", NULL, NULL, "! F l o o d enter", "F l o o d enter",
		"*. Open ground         0.0", NULL, NULL },
	{ "Help", NULL, NULL, "?", NULL, "I want to ...", NULL, NULL },
};
enum { WAYS = sizeof ways / sizeof *ways };

/* Those that need a shell above the program, or a look at the bytes: test_screen_ends.c,
 * test_screen.c. */
static const char *const elsewhere[] = { "Pause", "Draw afresh" };

/* At the court again, in the state that the act starts from. */
static void begin(struct table *at, const struct way *way)
{
	table_sit(at, way->plot ? way->plot : "court.plot", 24, 80);
	if (way->first)
		terminal_keys(at->t, way->first);
	if (way->ready)
		terminal_wait(at->t, way->ready);
	ck_assert_msg(!terminal_shows(at->t, way->shown), "%s: shown before", way->name);
}

START_TEST(each_act_is_done_by_its_key)
{
	struct table at;

	begin(&at, &ways[_i]);
	terminal_keys(at.t, ways[_i].keyed);
	terminal_wait(at.t, ways[_i].shown);
	table_leave(&at);
}
END_TEST

START_TEST(each_act_is_done_or_explained_by_its_name_in_the_list)
{
	const struct way *way = &ways[_i];
	struct table at;

	begin(&at, way);
	terminal_keys(at.t, "!");
	terminal_type(at.t, way->name);
	terminal_keys(at.t, "enter");
	if (way->listed)
		terminal_keys(at.t, way->listed);
	terminal_wait(at.t, way->told ? way->told : way->shown);
	table_leave(&at);
}
END_TEST

static bool is_tested(const char *name)
{
	for (size_t i = 0; i < sizeof elsewhere / sizeof *elsewhere; i++)
		if (strcmp(elsewhere[i], name) == 0)
			return true;
	for (int i = 0; i < WAYS; i++)
		if (strcmp(ways[i].name, name) == 0)
			return true;
	return false;
}

START_TEST(no_act_is_left_out_here)
{
	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		ck_assert_msg(is_tested(acts_get(id)->name), "add a row for the act \"%s\"",
			acts_get(id)->name);
	ck_assert_int_eq(ACTS - ACT_FIRST, WAYS + (int)(sizeof elsewhere / sizeof *elsewhere));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_acts");
	TCase *acts = suite_case(suite, "acts");

	tcase_add_loop_test(acts, each_act_is_done_by_its_key, 0, WAYS);
	tcase_add_loop_test(acts, each_act_is_done_or_explained_by_its_name_in_the_list, 0, WAYS);
	tcase_add_test(acts, no_act_is_left_out_here);
	return suite;
}
