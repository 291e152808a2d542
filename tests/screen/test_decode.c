/* Bytes in, keys out, without a terminal: whole, in pieces, cut off, and at random. */

#include "screen/decode.h"
#include "support/random.h"
#include "support/runner.h"

#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct decoder d;
static struct random r = { 1 };

static void setup(void)
{
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	decode_open(&d, 0);
}

static void teardown(void)
{
	decode_close(&d);
}

static void come(const char *bytes, size_t length)
{
	while (length) {
		size_t room;
		unsigned char *to = decode_room(&d, &room);
		size_t part = length < room ? length : room;

		memcpy(to, bytes, part);
		decode_add(&d, part);
		bytes += part;
		length -= part;
		if (length)
			ck_assert_int_eq(decode_next(&d), PRESS_NOTHING);
	}
}

/* The keys of bytes that come, up to none; 0 after them. */
enum { KEYS_MOST = 64 };
static int keys[KEYS_MOST + 1];

static void take(void)
{
	int count = 0, key;

	memset(keys, 0, sizeof keys);
	while ((key = decode_next(&d)) != PRESS_NOTHING && count < KEYS_MOST)
		keys[count++] = key;
}

static void type(const char *bytes)
{
	come(bytes, strlen(bytes));
	take();
}

static void check_keys(const char *what, const int *wanted)
{
	for (int i = 0; i == 0 || wanted[i - 1]; i++)
		ck_assert_msg(keys[i] == wanted[i], "%s: key %d is %x, not %x", what, i,
			(unsigned)keys[i], (unsigned)wanted[i]);
}

/* ---- Whole and in pieces --------------------------------------------------------------------- */

struct sending {
	const char *bytes;
	int press;
};

static const struct sending sendings[] = {
	{ "\033[A", PRESS_UP }, { "\033OA", PRESS_UP }, { "\033[3~", PRESS_DELETE },
	{ "\033[1;2D", PRESS_VIEW_LEFT }, { "\033[Z", PRESS_BACK_TAB }, { "\033OM", PRESS_ENTER },
	{ "\033Op", '0' }, { "\033Oy", '9' }, { "\033Oj", '*' }, { "\033Ok", '+' },
	{ "\r", PRESS_ENTER }, { "\177", PRESS_BACKSPACE }, { "\001", PRESS_LINE_START },
	{ "\005", PRESS_LINE_END }, { "\025", PRESS_ERASE_LINE }, { "\027", PRESS_ERASE_WORD },
	{ "\013", PRESS_ERASE_REST }, { "\003", PRESS_ESCAPE }, { "\002", PRESS_OTHER },
	{ "q", 'q' }, { "\303\251", 0xe9 }, { "\340\270\201", 0xe01 },
	{ "\360\237\214\271", 0x1f339 },
	{ "\033[<0;12;5M", PRESS_POINT }, { "\033[M !!", PRESS_POINT },
	{ "\033[15~", PRESS_F5 }, { "\033OP", PRESS_F1 }, { "\033[[A", PRESS_F1 },
	{ "\033[20~", PRESS_F9 }, { "\033[24~", PRESS_OTHER }, { "\033[[F", PRESS_OTHER },
	{ "\033[1;5A", PRESS_ON_UP }, { "\033Od", PRESS_ON_LEFT }, { "\033[1;3A", PRESS_OTHER },
	{ "\033[97;5u", PRESS_OTHER }, { "\033[5$", PRESS_OTHER },
	{ "\033[200~a\rb\033[201~", PRESS_PASTE }, { "\033Oz", PRESS_OTHER },
	{ "\033[5@", PRESS_OTHER },
	{ "\302\240", 0xa0 }, { "\355\237\277", 0xd7ff }, { "\356\200\200", 0xe000 },
};
enum { SENDINGS = sizeof sendings / sizeof *sendings };

START_TEST(each_key_is_known_whole_and_byte_by_byte)
{
	const struct sending *sent = &sendings[_i];
	int wanted[] = { sent->press, 0 }, none[] = { 0 };

	type(sent->bytes);
	check_keys(sent->bytes, wanted);
	for (const char *at = sent->bytes; *at; at++) {
		come(at, 1);
		take();
		check_keys(sent->bytes, at[1] ? none : wanted);
	}
	ck_assert_int_lt(decode_patience(&d), 0);
}
END_TEST

/* Esc, [ or O and one character more: nothing that is typed but for the keypad's own keys. */
START_TEST(of_all_short_sequences_the_keypads_alone_are_characters)
{
	static const char keypad[] = "*+,-./0123456789";

	for (const char *lead = "[O"; *lead; lead++)
		for (int last = '@'; last <= '~'; last++) {
			const char bytes[] = { '\033', *lead, (char)last, '\0' };
			bool is_typed = *lead == 'O' && last >= 'j' && last <= 'y';

			type(bytes);
			if (is_typed)
				check_keys(bytes, (int[]){ keypad[last - 'j'], 0 });
			else
				ck_assert_msg(!keys[1] && (!keys[0] || keys[0] >= PRESS_FIRST),
					"%s is %x", bytes, (unsigned)keys[0]);
			while (decode_patience(&d) >= 0)
				decode_silence(&d);
		}
}
END_TEST

/* Of a user who has told nothing, a tenth of a second or a little less: nobody notices it, and few
 * lines tear a sequence for so long. Common practice, no published source. */
START_TEST(esc_alone_waits_for_its_sequence_as_long_as_is_told)
{
	come("\033", 1);
	take();
	ck_assert_int_eq(keys[0], PRESS_NOTHING);
	ck_assert_int_ge(decode_patience(&d), 50);
	ck_assert_int_le(decode_patience(&d), 100);
	decode_close(&d);
	decode_open(&d, 250);
	come("\033", 1);
	take();
	ck_assert_int_eq(decode_patience(&d), 250);
	ck_assert_int_eq(decode_silence(&d), PRESS_ESCAPE);
}
END_TEST

START_TEST(the_rest_of_a_character_may_come_as_late_as_it_likes)
{
	static const char whole[] = "\360\237\214\271";

	for (size_t i = 0; i < 3; i++) {
		come(&whole[i], 1);
		take();
		ck_assert_int_eq(keys[0], PRESS_NOTHING);
		ck_assert_int_ge(decode_patience(&d), 0);
		ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
		ck_assert_int_lt(decode_patience(&d), 0);
		ck_assert(decode_is_between(&d));
	}
	type(&whole[3]);
	check_keys("a rose", (int[]){ 0x1f339, 0 });
}
END_TEST

/* Cut in two by a silence at every place. One byte alone is the rest if nobody types it. */
START_TEST(a_sequence_in_two_pieces_stays_right_or_harmless)
{
	for (int i = 0; i < SENDINGS; i++) {
		const char *bytes = sendings[i].bytes;
		size_t length = strlen(bytes);

		if (bytes[0] != '\033' || sendings[i].press == PRESS_PASTE)
			continue;
		for (size_t cut = 1; cut < length; cut++) {
			come(bytes, cut);
			take();
			ck_assert_int_eq(keys[0], PRESS_NOTHING);
			ck_assert_int_eq(decode_silence(&d), cut == 1 ? PRESS_ESCAPE : 0);
			type(bytes + cut);
			if ((bytes[cut] == '~' || length - cut >= 2) &&
			    (length > 3 || strchr("ABCD", bytes[2])))
				ck_assert_msg(keys[0] == sendings[i].press && !keys[1],
					"%s cut at %zu", bytes, cut);
			decode_silence(&d);
			decode_silence(&d);
		}
	}
}
END_TEST

START_TEST(two_letters_typed_after_esc_are_letters)
{
	type("\033");
	ck_assert_int_eq(decode_silence(&d), PRESS_ESCAPE);
	type("[]");
	check_keys("[]", (int[]){ '[', ']', 0 });
	type("\033");
	ck_assert_int_eq(decode_silence(&d), PRESS_ESCAPE);
	type("Op");
	check_keys("Op", (int[]){ 'O', 'p', 0 });
}
END_TEST

START_TEST(esc_and_a_key_typed_at_once_are_two_keys)
{
	type("\033<");
	check_keys("Esc <", (int[]){ PRESS_ESCAPE, '<', 0 });
	type("\033\033OA");
	check_keys("Esc Up", (int[]){ PRESS_ESCAPE, PRESS_UP, 0 });
	type("\033^");
	check_keys("Esc ^ so far", (int[]){ 0 });
	ck_assert_int_eq(decode_silence(&d), PRESS_ESCAPE);
	take();
	check_keys("Esc ^", (int[]){ '^', 0 });
	type("\033\r");
	check_keys("Esc Enter", (int[]){ PRESS_ESCAPE, PRESS_ENTER, 0 });
	type("\033]\r");
	check_keys("Esc ] Enter", (int[]){ PRESS_ESCAPE, ']', PRESS_ENTER, 0 });
	type("\033[M \rq");
	check_keys("a report that Enter cuts off", (int[]){ PRESS_ENTER, 'q', 0 });
	type("\033[5\177");
	check_keys("a key that Backspace cuts off", (int[]){ PRESS_BACKSPACE, 0 });
	type("\033[[\r");
	check_keys("the console's, cut off by Enter", (int[]){ PRESS_ENTER, 0 });
	come("\033\0q", 3);
	take();
	check_keys("Esc NUL q", (int[]){ PRESS_ESCAPE, PRESS_OTHER, 'q', 0 });
}
END_TEST

/* What silence has cut off. */
START_TEST(the_rest_of_a_sequence_that_comes_late_is_no_key)
{
	char digits[301];

	type("\r\r\r\r\r\r\r\r\r\r\r\r"); /* where the bytes were that are taken */
	type("\033[<2;");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("12;5M");
	check_keys("another button", (int[]){ 0 });
	type("q");
	check_keys("after it", (int[]){ 'q', 0 });
	type("\033[<2;");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("12;5M\033[A");
	check_keys("right after it", (int[]){ PRESS_UP, 0 });
	type("\033[20");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("0~ab\033[201~");
	check_keys("a paste", (int[]){ PRESS_PASTE, 0 });
	ck_assert_str_eq(d.paste.text.bytes, "ab");
	type("\033[200");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("~cd\033[201~");
	check_keys("a paste but for one byte", (int[]){ PRESS_PASTE, 0 });
	ck_assert_str_eq(d.paste.text.bytes, "cd");
	type("\033[");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("A");
	check_keys("a letter after Esc and another", (int[]){ 'A', 0 });
	type("\033[");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	memset(digits, '7', sizeof digits - 1);
	digits[300] = '\0';
	type(digits);
	ck_assert_int_eq(keys[KEYS_MOST - 1], '7'); /* so many are typed */
}
END_TEST

START_TEST(what_the_terminal_says_of_its_keys_goes_first)
{
	decode_learn(&d, "\013", PRESS_UP);
	decode_learn(&d, "\033A", PRESS_DOWN);
	decode_learn(&d, "\033[C", PRESS_LEFT);
	decode_learn(&d, NULL, PRESS_END);
	decode_learn(&d, "", PRESS_END);
	type("\013\033Aq\033[C");
	check_keys("learnt", (int[]){ PRESS_UP, PRESS_DOWN, 'q', PRESS_LEFT, 0 });
	type("\033[C");
	check_keys("learnt, by itself", (int[]){ PRESS_LEFT, 0 });
}
END_TEST

/* Two bytes each, of which no other terminal makes a key. */
START_TEST(so_many_keys_are_learnt_and_no_more)
{
	char bytes[LEARNT_MOST + 2][3];

	for (int i = 0; i < LEARNT_MOST + 2; i++) {
		snprintf(bytes[i], sizeof bytes[i], "\002%c", '0' + i);
		decode_learn(&d, bytes[i], PRESS_F1 + i % 3);
	}
	type(bytes[LEARNT_MOST - 1]);
	check_keys("the last", (int[]){ PRESS_F1 + (LEARNT_MOST - 1) % 3, 0 });
	type(bytes[LEARNT_MOST]);
	check_keys("one more", (int[]){ PRESS_OTHER, '0' + LEARNT_MOST, 0 });
	type(bytes[0]);
	check_keys("the first", (int[]){ PRESS_F1, 0 });
}
END_TEST

/* ---- What means nothing ---------------------------------------------------------------------- */

static const char *const nothings[] = {
	"\033[<2;12;5M", "\033[<2;12;5m", "\033[<1;12;5M", "\033[<66;12;5M", "\033[<67;12;5M",
	"\033[<128;12;5M", "\033[<34;12;5M", "\033[<0;99999;1M", "\033[<;;M", "\033[<M",
	"\033[<00000000;00000001;00001M", "\033[<000000000;000000001;0000001M",
	"\033[M\"!!", "\033[M!!!", "\033[12;40R", "\033[?62;1;6c", "\033[>0;276;0c", "\033[0n",
	"\033[I", "\033[O", "\033[8;24;80t", "\033[?2026;2$y", "\033[201~",
	"\033]11;rgb:0000/0000/0000\007", "\033]11;rgb:0/0/0\033\\",
	"\033P>|terminal 1 b p = #\033\\",
	"\033P1$r0m\033\\", "\033_Gi=1;OK = p\033\\", "\033^private =\033\\", "\033Xstring =\033\\",
	"\033]0;one\r\ntwo = \303\251\007", "\033\\",
	"\302\200", "\302\237", "\233", "\233200~", "\220\235\204\237", "\302\233", "\377",
	"\376\301\300", "\355\240\200",
	"\364\220\200\200", "\364\220\200\233", "\365\200\200\200",
	"\303", "\340\270", "\360\237\214",
	"\033[", "\033O", "\033[1;", "\033[<0;12", "\033[M", "\033[M ", "\033[?", "\033[20",
};
enum { NOTHINGS = sizeof nothings / sizeof *nothings };

/* No key by itself, and none of it sticks to the keys after it. Bytes that are characters of their
 * own may follow one that is not. */
START_TEST(what_means_nothing_is_no_key)
{
	const char *bytes = nothings[_i];
	bool is_broken = bytes[0] == '\233' && bytes[1];

	type(bytes);
	check_keys(bytes, is_broken ? (int[]){ '2', '0', '0', '~', 0 } : (int[]){ 0 });
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("q");
	check_keys(bytes, (int[]){ 'q', 0 });
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("\033[A");
	check_keys(bytes, (int[]){ PRESS_UP, 0 });
}
END_TEST

START_TEST(what_means_nothing_lets_the_next_key_through_at_once)
{
	char line[200];

	if (_i >= NOTHINGS - 11)
		return; /* these are only begun */
	snprintf(line, sizeof line, "%s\033[A%s\033[B", nothings[_i], nothings[_i]);
	type(line);
	if (nothings[_i][0] == '\233' && nothings[_i][1])
		return;
	check_keys(nothings[_i], (int[]){ PRESS_UP, PRESS_DOWN, 0 });
}
END_TEST

START_TEST(a_sequence_of_any_length_is_one)
{
	char *bytes = malloc(100001);

	memset(bytes, '7', 100000);
	memcpy(bytes, "\033[", 2);
	bytes[100000] = 'b';
	come(bytes, 100001);
	take();
	check_keys("endless", (int[]){ 0 });
	type("\033[A");
	check_keys("after it", (int[]){ PRESS_UP, 0 });
	bytes[200] = ' ';
	bytes[100000] = 0x7f;
	come(bytes, 100001);
	take();
	check_keys("what ends it is no part of it", (int[]){ PRESS_BACKSPACE, 0 });
	bytes[100000] = '\r';
	come(bytes, 100001);
	take();
	check_keys("Enter ends it too", (int[]){ PRESS_ENTER, 0 });
	come(bytes, 300);
	take();
	type("b");
	type("q");
	check_keys("its end by itself", (int[]){ 'q', 0 });
	memset(bytes, 'q', KEYS_MOST - 1);
	memcpy(bytes + KEYS_MOST - 1, "\033[", 2);
	memcpy(bytes + 1000, "~z", 2);
	come(bytes, 1002);
	take();
	ck_assert_int_eq(keys[KEYS_MOST - 2], 'q');
	ck_assert_int_eq(keys[KEYS_MOST - 1], 'z');
	free(bytes);
}
END_TEST

START_TEST(a_string_that_never_ends_lets_ctrl_c_and_arrows_through)
{
	type("\033]0;for ever");
	type("\003");
	check_keys("Ctrl-C", (int[]){ PRESS_ESCAPE, 0 });
	type("\033P0;for ever");
	type("\033[B");
	check_keys("Down", (int[]){ PRESS_DOWN, 0 });
	type("\033_for ever");
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	ck_assert_int_gt(decode_patience(&d), 0);
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	type("q");
	check_keys("after a long silence", (int[]){ 'q', 0 });
}
END_TEST

/* ---- Pastes ---------------------------------------------------------------------------------- */

START_TEST(a_large_paste_is_one_text)
{
	size_t length = 300000;
	char *text = malloc(length);

	for (size_t i = 0; i < length; i++)
		text[i] = (char)random_below(&r, 255);
	memcpy(text, "S = ", 4);
	for (size_t i = 0; i + 1 < length; i++)
		if (text[i] == '\033' && text[i + 1] == '[')
			text[i] = ' ';
	type("\033[200~");
	come(text, length);
	come("\033[201~", 6);
	take();
	check_keys("paste", (int[]){ PRESS_PASTE, 0 });
	ck_assert_uint_eq(d.paste.text.length, length);
	ck_assert(memcmp(d.paste.text.bytes, text, length) == 0);
	free(text);
}
END_TEST

START_TEST(a_paste_over_a_line_that_falters_comes_in_parts_and_never_as_keys)
{
	type("\033[200~one \303");
	ck_assert_int_eq(decode_silence(&d), PRESS_PASTE);
	ck_assert_str_eq(d.paste.text.bytes, "one ");
	type("\251 two\033[20");
	check_keys("parts", (int[]){ 0 });
	ck_assert_int_eq(decode_silence(&d), PRESS_PASTE);
	ck_assert_str_eq(d.paste.text.bytes, "\303\251 two");
	type("1~");
	check_keys("the end alone", (int[]){ 0 });
	type("q");
	check_keys("after it", (int[]){ 'q', 0 });
}
END_TEST

START_TEST(a_paste_of_nothing_is_one_and_one_without_end_keeps_a_megabyte)
{
	enum { PART = 1 << 12, MEGABYTE = 1 << 20 };
	char part[PART];

	type("\033[200~a\033[201~");
	check_keys("a", (int[]){ PRESS_PASTE, 0 });
	type("\033[200~\033[201~");
	check_keys("nothing", (int[]){ PRESS_PASTE, 0 });
	ck_assert_uint_eq(d.paste.text.length, 0);
	memset(part, 'a', PART);
	type("\033[200~");
	for (int i = 0; i < 2 * MEGABYTE / PART; i++) {
		come(part, PART);
		ck_assert_int_eq(decode_next(&d), PRESS_NOTHING);
	}
	type("\033[201~");
	check_keys("two megabytes", (int[]){ PRESS_PASTE, 0 });
	ck_assert_uint_eq(d.paste.text.length, MEGABYTE);
}
END_TEST

START_TEST(a_part_of_a_paste_ends_with_a_whole_character)
{
	static const char *const characters[] = { "x", "\303\251", "\337\277", "\340\270\201",
		"\357\277\275", "\360\237\214\271", "\364\217\277\277" };

	for (size_t i = 0; i < sizeof characters / sizeof *characters; i++)
		for (size_t cut = 1; cut <= strlen(characters[i]); cut++) {
			bool is_whole = !characters[i][cut];
			char first[12], rest[12];

			snprintf(first, sizeof first, "one %s", is_whole ? characters[i] : "");
			snprintf(rest, sizeof rest, "%stwo", is_whole ? "" : characters[i]);
			type("\033[200~one ");
			come(characters[i], cut);
			take();
			ck_assert_int_eq(decode_silence(&d), PRESS_PASTE);
			ck_assert_str_eq(d.paste.text.bytes, first);
			type(characters[i] + cut);
			type("two\033[201~");
			check_keys("the rest", (int[]){ PRESS_PASTE, 0 });
			ck_assert_str_eq(d.paste.text.bytes, rest);
		}
}
END_TEST

START_TEST(a_long_silence_ends_a_paste_whose_end_is_lost)
{
	type("\033[200~one");
	ck_assert_int_eq(decode_silence(&d), PRESS_PASTE);
	ck_assert_int_gt(decode_patience(&d), 500);
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	ck_assert_int_lt(decode_patience(&d), 0);
	type("q");
	check_keys("after it", (int[]){ 'q', 0 });
}
END_TEST

START_TEST(much_text_at_once_is_a_paste_where_text_is_asked_for)
{
	char text[200];

	memset(text, 'a', sizeof text);
	text[60] = '\r';
	come(text, 63);
	decode_burst(&d);
	take();
	ck_assert_int_eq(keys[0], 'a');
	come(text, sizeof text);
	decode_burst(&d);
	take();
	check_keys("burst", (int[]){ 0 });
	come("\r\033[A", 4);
	ck_assert_int_eq(decode_next(&d), PRESS_NOTHING);
	ck_assert_int_eq(decode_silence(&d), PRESS_PASTE);
	ck_assert_uint_eq(d.paste.text.length, sizeof text + 4);
	type("\r");
	check_keys("after it", (int[]){ PRESS_ENTER, 0 });
}
END_TEST

/* 64 bytes that are text, in which there is no key but Tab and Enter. */
START_TEST(a_burst_has_so_many_bytes_and_no_key_in_it)
{
	static const char marks[] = { 'a', '\t', '\r', '\x80', '\x7f', '\b', '\033' };
	char text[64];

	for (size_t i = 0; i < sizeof marks; i++) {
		bool is_text = i < 4;
		size_t room;

		memset(text, 'a', sizeof text);
		text[50] = marks[i];
		memcpy(decode_room(&d, &room), text, sizeof text);
		decode_add(&d, sizeof text);
		ck_assert(decode_has_many(&d));
		ck_assert_int_eq(decode_next(&d), 'a');
		ck_assert(!decode_has_many(&d));
		memcpy(d.bytes + d.end, text, 1); /* with what is taken still before it */
		decode_add(&d, 1);
		decode_burst(&d);
		take();
		ck_assert_int_eq(keys[0], is_text ? PRESS_NOTHING : 'a');
		ck_assert_int_eq(decode_silence(&d), is_text ? PRESS_PASTE : PRESS_NOTHING);
		if (is_text)
			ck_assert_uint_eq(d.paste.text.length, sizeof text);
		decode_silence(&d);
	}
}
END_TEST

START_TEST(between_keys_is_where_nothing_has_begun_or_it_has_stopped)
{
	ck_assert(decode_is_between(&d));
	come("\033[", 2);
	take();
	ck_assert(!decode_is_between(&d));
	ck_assert_int_eq(decode_silence(&d), PRESS_NOTHING);
	ck_assert(decode_is_between(&d));
	decode_add(&d, 0);
	ck_assert(decode_is_between(&d)); /* no byte has come */
	come("1", 1);
	ck_assert(!decode_is_between(&d));
}
END_TEST

START_TEST(many_arrows_at_once_are_keys)
{
	for (int i = 0; i < 40; i++)
		come("\033OA", 3);
	decode_burst(&d);
	take();
	for (int i = 0; i < 40; i++)
		ck_assert_int_eq(keys[i], PRESS_UP);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

static const char *const pieces[] = { "\033", "[", "O", "\033[", "\033[<", "\033[M", "\033]",
	"\007", "\033\\", "\033[200~", "\033[201~", ";", "M", "0", "\303", "\251", "\377", "A", "~",
	"\033P" };

/* Whatever came, a long silence brings the decoder to rest, and then each key is itself. */
START_TEST(anything_comes_to_rest)
{
	for (int i = 0; i < runner_count(20000, 2000000); i++) {
		for (int j = random_below(&r, 12); j > 0; j--) {
			char byte = (char)random_below(&r, 256);

			if (random_below(&r, 4)) {
				const char *piece = pieces[random_below(&r, 20)];
				come(piece, strlen(piece));
			} else {
				come(&byte, 1);
			}
			if (random_below(&r, 3) == 0)
				take();
			if (random_below(&r, 8) == 0 && decode_patience(&d) >= 0)
				decode_silence(&d);
		}
		take();
		for (int j = 0; j < 4 && decode_patience(&d) >= 0; j++) {
			decode_silence(&d);
			take();
		}
		ck_assert_int_lt(decode_patience(&d), 0);
		type("q");
		check_keys("at rest", (int[]){ 'q', 0 });
		type("\033[A");
		check_keys("at rest", (int[]){ PRESS_UP, 0 });
	}
}
END_TEST

START_TEST(a_letter_that_the_locale_lacks_is_told)
{
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C"));
	type("caf\303\251s");
	check_keys("letters", (int[]){ 'c', 'a', 'f', PRESS_UNREAD, PRESS_UNREAD, 's', 0 });
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("decode");
	TCase *all = suite_case(suite, "decode");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_loop_test(all, each_key_is_known_whole_and_byte_by_byte, 0, SENDINGS);
	tcase_add_test(all, of_all_short_sequences_the_keypads_alone_are_characters);
	tcase_add_test(all, esc_alone_waits_for_its_sequence_as_long_as_is_told);
	tcase_add_test(all, the_rest_of_a_character_may_come_as_late_as_it_likes);
	tcase_add_test(all, a_sequence_in_two_pieces_stays_right_or_harmless);
	tcase_add_test(all, two_letters_typed_after_esc_are_letters);
	tcase_add_test(all, the_rest_of_a_sequence_that_comes_late_is_no_key);
	tcase_add_test(all, esc_and_a_key_typed_at_once_are_two_keys);
	tcase_add_test(all, what_the_terminal_says_of_its_keys_goes_first);
	tcase_add_test(all, so_many_keys_are_learnt_and_no_more);
	tcase_add_test(all, a_letter_that_the_locale_lacks_is_told);
	tcase_add_loop_test(all, what_means_nothing_is_no_key, 0, NOTHINGS);
	tcase_add_loop_test(all, what_means_nothing_lets_the_next_key_through_at_once, 0, NOTHINGS);
	tcase_add_test(all, a_sequence_of_any_length_is_one);
	tcase_add_test(all, a_string_that_never_ends_lets_ctrl_c_and_arrows_through);
	tcase_add_test(all, a_large_paste_is_one_text);
	tcase_add_test(all, a_paste_over_a_line_that_falters_comes_in_parts_and_never_as_keys);
	tcase_add_test(all, a_part_of_a_paste_ends_with_a_whole_character);
	tcase_add_test(all,
		a_paste_of_nothing_is_one_and_one_without_end_keeps_a_megabyte);
	tcase_add_test(all, a_long_silence_ends_a_paste_whose_end_is_lost);
	tcase_add_test(all, much_text_at_once_is_a_paste_where_text_is_asked_for);
	tcase_add_test(all, many_arrows_at_once_are_keys);
	tcase_add_test(all, a_burst_has_so_many_bytes_and_no_key_in_it);
	tcase_add_test(all, between_keys_is_where_nothing_has_begun_or_it_has_stopped);
	tcase_add_test(all, anything_comes_to_rest);
	return suite;
}
