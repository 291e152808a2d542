/* Drawings as they come out of a printer: rendered by librsvg's rsvg-convert, and measured in the
 * picture. */
#include "base/file.h"
#include "report/svg/svg.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <cairo.h>
#include <spawn.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

enum { PER_MM = 8, DARK = 100, LIGHT = 250, MARGIN = 9 }; /* pixels; of 255; mm */

static struct garden garden;
static struct text bytes;

/* A rendered sheet, and where its files are. */
static cairo_surface_t *picture;
static int columns, rows;
static char *folder;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	bytes = TEXT_EMPTY;
	picture = NULL;
	folder = scratch_new();
}

static void teardown(void)
{
	cairo_surface_destroy(picture);
	scratch_remove(folder);
	text_fini(&bytes);
	garden_fini(&garden);
}

static void print(struct sink *out, const void *context)
{
	(void)context;
	sink_add_bytes(out, bytes.bytes, bytes.length);
}

/* Runs the renderer; a picture of that width. */
static void convert(const char *from, const char *to, int width)
{
	char wide[16];
	const char *const arguments[] = { "rsvg-convert", "--background-color", "white", "--width",
		wide, "--keep-aspect-ratio", "--output", to, from, NULL };
	pid_t process;
	int status;

	snprintf(wide, sizeof wide, "%d", width);
	ck_assert_int_eq(posix_spawnp(&process, arguments[0], NULL, NULL,
		(char *const *)(uintptr_t)arguments, environ), 0);
	ck_assert_int_eq(waitpid(process, &status, 0), process);
	ck_assert_int_eq(status, 0);
}

static void render(double wide)
{
	const struct file_content content = { print, NULL };
	char from[4096], to[4096];
	struct file_error error;

	snprintf(from, sizeof from, "%s/a.svg", folder);
	snprintf(to, sizeof to, "%s/a.png", folder);
	ck_assert_msg(file_print(from, &content, &error), "%s", error.sentence);
	convert(from, to, (int)(wide * PER_MM));
	picture = cairo_image_surface_create_from_png(to);
	ck_assert_int_eq(cairo_surface_status(picture), CAIRO_STATUS_SUCCESS);
	columns = cairo_image_surface_get_width(picture);
	rows = cairo_image_surface_get_height(picture);
}

static void draw(const char *path, const struct svg_asked *asked)
{
	struct text_sink sink = text_sink(&bytes);
	const char *box;
	double wide, high;

	garden_file(&garden, path);
	garden_count(&garden);
	report_svg(&sink.sink, &garden.plot, &garden.takeoff, path, asked);
	box = strstr(bytes.bytes, "viewBox=\"");
	ck_assert(box && sscanf(box, "viewBox=\"0 0 %lf %lf\"", &wide, &high) == 2);
	render(wide);
	ck_assert_int_eq(columns, (int)(wide * PER_MM));
	ck_assert_int_le(abs(rows - (int)(high * PER_MM)), 1);
}

/* ---- Pixels ---------------------------------------------------------------------------------- */

static const unsigned char *pixel(int x, int y)
{
	return cairo_image_surface_get_data(picture) +
		(ptrdiff_t)y * cairo_image_surface_get_stride(picture) + 4 * (ptrdiff_t)x;
}

static bool is_dark(int x, int y)
{
	const unsigned char *p = pixel(x, y);

	return p[0] < DARK && p[1] < DARK && p[2] < DARK;
}

/* There, or a pixel beside it. */
static bool is_near_dark(int x, int y)
{
	for (int i = 0; i < 9; i++)
		if (is_dark(x + i % 3 - 1, y + i / 3 - 1))
			return true;
	return false;
}

static bool is_white(int x, int y)
{
	const unsigned char *p = pixel(x, y);

	return p[0] >= LIGHT && p[1] >= LIGHT && p[2] >= LIGHT;
}

static bool is_grey(int x, int y)
{
	const unsigned char *p = pixel(x, y);

	return abs(p[0] - p[1]) < 8 && abs(p[1] - p[2]) < 8;
}

static void check_margins(void)
{
	for (int y = 0; y < rows; y++)
		for (int x = 0; x < columns; x++)
			if (x < MARGIN * PER_MM || y < MARGIN * PER_MM ||
			    x >= columns - MARGIN * PER_MM || y >= rows - MARGIN * PER_MM)
				ck_assert_msg(is_white(x, y), "ink at %d, %d", x, y);
}

static int count_coloured(void)
{
	int count = 0;

	for (int y = 0; y < rows; y++)
		for (int x = 0; x < columns; x++)
			count += !is_grey(x, y);
	return count;
}

/* Middles of dark runs along a row of pixels. */
static int dark_runs(int y, double *middles, int most)
{
	int count = 0;

	for (int x = 0, from; x < columns; x++) {
		if (!is_dark(x, y))
			continue;
		for (from = x; x < columns && is_dark(x, y);)
			x++;
		if (count < most)
			middles[count] = (from + x) / 2.0;
		count++;
	}
	return count;
}

/* ---- Measures -------------------------------------------------------------------------------- */

static double stated_scale(void)
{
	const char *at = strstr(bytes.bytes, "Scale 1");

	ck_assert(at && (at = strstr(at, "1:")));
	return atof(at + 2);
}

/* Where the plan's left upper corner is. */
static void datum(double *x, double *y)
{
	const char *at = strstr(bytes.bytes, "<g id=\"ground\"");

	ck_assert(at && (at = strstr(at, "translate(")) &&
		sscanf(at, "translate(%lf %lf)", x, y) == 2);
}

/* The court is 16 ft wide. Half a foot above its lower edge there is nothing but its own two edges,
 * and its two posts' fences, 5 1/4 in inside of them: in a picture of any paper the edges are 16 ft
 * apart by the scale that the sheet states, to a pixel. */
START_TEST(sixteen_feet_measure_sixteen_feet_on_every_paper)
{
	struct svg_asked asked = { .paper = _i % PAPERS, .turn = _i / PAPERS % PAPER_TURNS,
		.sheet = 1, .is_plain = _i >= PAPERS * PAPER_TURNS };
	const double foot = 304.8; /* mm, by definition */
	double x, y, runs[64], left = 0, right = 0;
	int count;

	draw("plots/court.plot", &asked);
	check_margins();
	ck_assert_msg((count_coloured() > 0) == !asked.is_plain, "%d pixels have a colour",
		count_coloured());
	datum(&x, &y);
	count = dark_runs((int)((y + 11.5 * foot / stated_scale()) * PER_MM), runs, 64);
	for (int i = 0; i < count && i < 64; i++) {
		if (runs[i] > (x - 1) * PER_MM && left == 0)
			left = runs[i];
		if (runs[i] < (x + 1 + 16 * foot / stated_scale()) * PER_MM)
			right = runs[i];
	}
	ck_assert_double_eq_tol((right - left) / PER_MM, 16 * foot / stated_scale(), 1.0 / PER_MM);
}
END_TEST

/* The bar is as long in the picture as the sheet says that a rule has it. */
START_TEST(the_bar_measures_what_the_sheet_says)
{
	static const char *const plots[] = { "plots/court.plot", "plots/elbow.plot",
		"plots/ring.plot", "plots/rope-walk.plot", "plots/great-court.plot" };
	struct svg_asked asked = SVG_AS_FITS;
	const char *said;
	struct scan scan;
	struct diag d;
	double x, y, wide, high, runs[64];
	nm length;
	int count;

	asked.is_plain = true;
	draw(plots[_i], &asked);
	said = strstr(bytes.bytes, "this bar is ");
	ck_assert(said);
	said += strlen("this bar is ");
	scan = scan_start(said, (size_t)(strstr(said, " long") - said), 1);
	ck_assert_msg(length_scan(&scan, plot_units(&garden.plot), &length, &d), "%s", d.found);
	said = strstr(bytes.bytes, "<g id=\"bar\"");
	ck_assert(said && (said = strstr(said, "<rect")));
	ck_assert_int_eq(sscanf(said, "<rect x=\"%lf\" y=\"%lf\" width=\"%lf\" height=\"%lf\"",
		&x, &y, &wide, &high), 4);
	count = dark_runs((int)((y + high / 2) * PER_MM), runs, 64);
	ck_assert_int_ge(count, 3);
	/* Two dark parts of four, each a quarter, and the rim at the end. */
	for (int i = 0; i + 2 < count; i++)
		if (runs[i] > x * PER_MM && runs[i + 2] < (x + wide + 1) * PER_MM) {
			ck_assert_double_eq_tol((runs[i + 1] - runs[i]) / PER_MM,
				(double)length / 2 / (double)NM_PER_MM, 1.5 / PER_MM);
			ck_assert_double_eq_tol((runs[i + 2] - runs[i]) / PER_MM,
				(double)length * 7 / 8 / (double)NM_PER_MM, 1.5 / PER_MM);
			return;
		}
	ck_abort_msg("no bar");
}
END_TEST

/* Mirrored plots look mirrored: of the rope walk, whose mirror is four-way, each dark pixel of the
 * ground has images that are dark, to a pixel, words apart. */
START_TEST(images_look_alike)
{
	struct svg_asked asked = { .paper = PAPER_A3, .turn = AS_FITS, .sheet = 1,
		.is_plain = true };
	const double foot = 304.8;
	double x, y, cell;
	int differ = 0, dark = 0, across, down;

	draw("plots/rope-walk.plot", &asked);
	datum(&x, &y);
	cell = foot / stated_scale() * PER_MM;
	across = (int)(2 * (x * PER_MM + 20 * cell)); /* twice the axes */
	down = (int)(2 * (y * PER_MM + 18 * cell));
	/* The lawn and the path at the left, from 1 to 6 cells across: no words are there. */
	for (int py = (int)(y * PER_MM + 2 * cell); py < (int)(y * PER_MM + 16 * cell); py++)
		for (int px = (int)(x * PER_MM + cell); px < (int)(x * PER_MM + 5 * cell); px++) {
			if (!is_dark(px, py))
				continue;
			dark++;
			differ += !is_near_dark(across - px, py) || !is_near_dark(px, down - py);
		}
	ck_assert_int_gt(dark, 1000);
	ck_assert_msg(differ == 0, "%d of %d dark pixels differ", differ, dark);
}
END_TEST

START_TEST(every_sample_is_within_the_margins)
{
	static const char *const plots[] = { "plots/elbow.plot", "plots/ring.plot",
		"plots/rope-walk.plot", "plots/snags.plot", "plots/great-court.plot",
		"tests/plots/drawn.plot" };
	struct svg_asked asked = SVG_AS_FITS;

	asked.with = _i % 2 ? DRAW_LEVELS | DRAW_STRINGS : 0;
	draw(plots[_i], &asked);
	check_margins();
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("svg, rendered");
	TCase *rendered = suite_case(suite, "rendered");

	tcase_add_checked_fixture(rendered, setup, teardown);
	tcase_add_loop_test(rendered, sixteen_feet_measure_sixteen_feet_on_every_paper, 0,
		2 * PAPERS * PAPER_TURNS);
	tcase_add_loop_test(rendered, the_bar_measures_what_the_sheet_says, 0, 5);
	tcase_add_test(rendered, images_look_alike);
	tcase_add_loop_test(rendered, every_sample_is_within_the_margins, 0, 6);
	return suite;
}
