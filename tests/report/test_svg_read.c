/* Drawings read back by an XML reader: libxml2 says whether they are well-formed, GEOS whether
 * their shapes are the ground's. Elements and attributes: W3C Recommendation, Scalable Vector
 * Graphics (SVG) 1.1 (Second Edition), 2011, Element Index and Attribute Index; from memory. */
#include "plot/edit/levels_move.h"
#include "report/svg/svg.h"
#include "report/svg/sheet.h"
#include "support/details.h"
#include "support/fences.h"
#include "support/garden.h"
#include "support/geos.h"
#include "support/golden.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <libxml/parser.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { MOST = 24 };

static struct garden garden;
static struct text bytes;
static xmlDoc *document;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	bytes = TEXT_EMPTY;
	document = NULL;
}

static void teardown(void)
{
	xmlFreeDoc(document);
	text_fini(&bytes);
	garden_fini(&garden);
}

/* Draws the garden, which is counted, and reads the drawing. */
static void draw(const struct svg_asked *asked, const char *name)
{
	struct text why = TEXT_EMPTY;
	struct text_sink sink = text_sink(&bytes);

	ck_assert_msg(svg_fits(&garden.plot, &garden.takeoff, asked, &why), "%s", why.bytes);
	text_fini(&why);
	text_clear(&bytes);
	report_svg(&sink.sink, &garden.plot, &garden.takeoff, name, asked);
	xmlFreeDoc(document);
	document = xmlReadMemory(bytes.bytes, (int)bytes.length, "drawing", NULL,
		XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
	ck_assert_msg(document, "%s: %s", name, xmlGetLastError()->message);
}

/* A plot whose cells are small enough to fit on any sheet. */
static void garden_at_random(uint64_t seed)
{
	struct random random = { seed };

	whole_plot_at_random(&garden.plot, &random, MOST);
	block_set(&garden.plot.details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = (1 + (int)(seed % 20)) * NM_PER_INCH });
	levels_cover(&garden.plot.details.levels, &garden.plot.ground, plot_cell(&garden.plot));
	garden_count(&garden);
}

/* ---- Reading --------------------------------------------------------------------------------- */

/* The next element in the order of the document; NULL after the last. */
static xmlNode *next_element(xmlNode *node)
{
	xmlNode *down = xmlFirstElementChild(node);

	if (down)
		return down;
	while (node && !xmlNextElementSibling(node))
		node = node->parent->type == XML_ELEMENT_NODE ? node->parent : NULL;
	return node ? xmlNextElementSibling(node) : NULL;
}

static xmlNode *root(void)
{
	return xmlDocGetRootElement(document);
}

static bool is_element(const xmlNode *node, const char *name)
{
	return strcmp((const char *)node->name, name) == 0;
}

/* An attribute's value, good until the next call but three; "" where there is none. */
static const char *attribute(xmlNode *node, const char *name)
{
	static char values[4][1 << 16];
	static int turn;
	xmlChar *value = xmlGetProp(node, (const xmlChar *)name);

	turn = (turn + 1) % 4;
	snprintf(values[turn], sizeof values[turn], "%s", value ? (const char *)value : "");
	xmlFree(value);
	return values[turn];
}

static double number(xmlNode *node, const char *name)
{
	return strtod(attribute(node, name), NULL);
}

static const char *content(xmlNode *node)
{
	static char words[4096];
	xmlChar *value = xmlNodeGetContent(node);

	snprintf(words, sizeof words, "%s", (const char *)value);
	xmlFree(value);
	return words;
}

static bool has_text(const char *words)
{
	for (xmlNode *node = root(); node; node = next_element(node))
		if (is_element(node, "text") && strcmp(content(node), words) == 0)
			return true;
	return false;
}

static xmlNode *by_id(const char *id)
{
	for (xmlNode *node = root(); node; node = next_element(node))
		if (strcmp(attribute(node, "id"), id) == 0)
			return node;
	ck_abort_msg("nothing has the id %s", id);
}

/* ---- Form ------------------------------------------------------------------------------------ */

/* Between blanks: an element, then its attributes; those of graphics elements besides. */
static const char *const known[] = {
	" svg xmlns version width height viewBox font-family ", " title ", " defs ",
	" g id transform clip-path ", " clipPath id ",
	" pattern id patternUnits width height patternTransform ", " path id d ",
	" rect x y width height ", " circle cx cy r ", " line x1 y1 x2 y2 ", " polyline points ",
	" polygon points ", " text x y font-size font-weight text-anchor transform ", NULL
};
static const char painted[] = " fill stroke stroke-width stroke-dasharray fill-opacity fill-rule ";

static bool has_word(const char *words, const char *word)
{
	char search[64];

	snprintf(search, sizeof search, " %s ", word);
	return strstr(words, search);
}

static void check_element(xmlNode *node)
{
	const char *name = (const char *)node->name, *const *row = known;

	while (*row && strncmp(*row + 1, name, strlen(name)) != 0)
		row++;
	while (*row && (*row)[1 + strlen(name)] != ' ')
		row++;
	ck_assert_msg(*row, "<%s> is none of the elements", name);
	for (xmlAttr *a = node->properties; a; a = a->next)
		ck_assert_msg(has_word(*row, (const char *)a->name) ||
			has_word(painted, (const char *)a->name), "<%s %s>", name,
			(const char *)a->name);
}

static void check_form(void)
{
	int shapes = 0;

	ck_assert_str_eq((const char *)root()->ns->href, "http://www.w3.org/2000/svg");
	ck_assert_str_eq(attribute(root(), "version"), "1.1");
	for (xmlNode *node = root(); node; node = next_element(node)) {
		check_element(node);
		shapes += is_element(node, "path");
	}
	ck_assert_int_ge(shapes, garden.takeoff.survey.region_count);
}

START_TEST(every_sample_is_drawn_in_known_elements_on_every_paper)
{
	static const char *const plots[] = { "court", "elbow", "ring", "rope-walk", "snags",
		"great-court" };
	char path[64];

	snprintf(path, sizeof path, "plots/%s.plot", plots[_i / PAPERS]);
	garden_file(&garden, path);
	garden_count(&garden);
	for (int turn = 0; turn < 2 * PAPER_TURNS; turn++) {
		struct svg_asked asked = SVG_AS_FITS;
		const struct paper_row *paper = &papers[_i % PAPERS];

		asked.paper = _i % PAPERS;
		asked.turn = turn % PAPER_TURNS;
		asked.is_plain = turn >= PAPER_TURNS;
		draw(&asked, path);
		check_form();
		ck_assert_double_eq_tol(strtod(attribute(root(), "width"), NULL) *
			(paper->units == UNITS_METRIC ? 1 : 25.4), (double)(asked.turn ?
			paper->height : paper->width) / (double)NM_PER_MM, 1e-9);
	}
}
END_TEST

/* A drawing as a whole, as small as one can be. */
START_TEST(a_small_plot_is_drawn_byte_by_byte)
{
	struct svg_asked asked = SVG_AS_FITS;

	garden_rows(&garden, (const char *const[]){ "bbbbp.", "bbbbp.", "bbbbpl", "ppppFl", NULL });
	fence_from(&garden.plot, "0,4 6,4 6,0", "6,1 6,3");
	garden_count(&garden);
	asked.is_plain = true;
	draw(&asked, "small.plot");
	golden_check("small.svg", bytes.bytes);
}
END_TEST

/* A little of everything, with all that can be drawn besides. */
START_TEST(a_plot_of_everything_is_drawn_byte_by_byte)
{
	struct svg_asked asked = SVG_AS_FITS;

	garden_file(&garden, "tests/plots/gallery.plot");
	garden_count(&garden);
	asked.with = DRAW_LEVELS | DRAW_STRINGS;
	asked.paper = PAPER_TABLOID;
	draw(&asked, "gallery.plot");
	golden_check("gallery.svg", bytes.bytes);
}
END_TEST

START_TEST(any_plot_is_drawn_in_known_elements)
{
	struct svg_asked asked = SVG_AS_FITS;

	garden_at_random((uint64_t)_i);
	asked.with = (unsigned)_i % 4;
	asked.is_plain = _i % 2;
	asked.paper = PAPER_A3;
	draw(&asked, "random.plot");
	check_form();
}
END_TEST

/* ---- Shapes ---------------------------------------------------------------------------------- */

/* A path of M, H, V and Z in whole cells, as the loops of a region: its area by the shoelace
 * formula (loops of holes run the other way round), and as a shape of GEOS. */
struct read_path {
	GEOSContextHandle_t geos;
	GEOSGeometry *shape;
	double area;
};

static void add_loop(struct read_path *path, const double *xy, size_t points)
{
	GEOSGeometry *ring = geos_ring(path->geos, xy, points), *without;
	double twice = 0;

	for (size_t i = 0; i < points; i++) {
		size_t next = (i + 1) % points;

		twice += xy[2 * i] * xy[2 * next + 1] - xy[2 * next] * xy[2 * i + 1];
	}
	path->area += twice / 2;
	if (!path->shape) {
		path->shape = ring;
		return;
	}
	without = geos_difference(path->geos, path->shape, ring);
	geos_free(path->geos, ring);
	geos_free(path->geos, path->shape);
	path->shape = without;
}

static void read_path(struct read_path *path, const char *d)
{
	static double xy[1 << 14];
	double x = 0, y = 0;
	size_t points = 0;

	while (*d) {
		char command = *d++, *end = (char *)(uintptr_t)d;

		if (command == 'Z') {
			add_loop(path, xy, points);
			points = 0;
			continue;
		}
		ck_assert(strchr("MHV", command));
		if (command != 'V')
			x = strtod(d, &end);
		if (command != 'H')
			y = strtod(command == 'M' ? end : d, &end);
		d = end;
		xy[2 * points] = x;
		xy[2 * points++ + 1] = y;
	}
}

static GEOSGeometry *cells_of(GEOSContextHandle_t geos, int region)
{
	const struct survey *survey = &garden.takeoff.survey;
	static struct geos_box boxes[1 << 12];
	size_t count = 0;

	for (int i = 0; i < survey->columns * survey->rows; i++) {
		int x = i % survey->columns, y = i / survey->columns;

		if (survey_region_at(survey, x, y) == region)
			boxes[count++] = (struct geos_box){ x, y, x + 1, y + 1 };
	}
	return geos_union(geos, boxes, count);
}

START_TEST(shapes_are_the_regions_of_the_takeoff)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct svg_asked asked = SVG_AS_FITS;
	GEOSContextHandle_t geos = geos_start();

	garden_at_random((uint64_t)_i + 1000);
	draw(&asked, "random.plot");
	for (int i = 0; i < survey->region_count; i++) {
		struct read_path path = { .geos = geos };
		char name[REGION_NAME_MOST];
		GEOSGeometry *cells = cells_of(geos, i);

		survey_region_name(&survey->regions[i], name);
		read_path(&path, attribute(by_id(name), "d"));
		ck_assert_msg(path.area == survey->regions[i].cells, "seed %d: %s has %g cells, "
			"not %d", _i, name, path.area, survey->regions[i].cells);
		ck_assert_msg(geos_apart(geos, path.shape, cells) == 0, "seed %d: %s", _i, name);
		geos_free(geos, path.shape);
		geos_free(geos, cells);
	}
	geos_end(geos);
}
END_TEST

/* The scale that the sheet states. */
static int stated_scale(void)
{
	const char *at = strstr(bytes.bytes, "Scale 1");

	ck_assert(at);
	at = strstr(at, "1:");
	ck_assert(at);
	return atoi(at + 2);
}

/* A cell of 1 ft at 1 in = 4 ft is 1/4 in, 6.35 mm. */
START_TEST(a_cell_is_as_long_as_the_scale_says)
{
	static const struct {
		const char *plot, *scale;
		double cell; /* mm on paper */
	} rows[] = { { "plots/court.plot", "4 ft", 6.35 }, { "plots/court.plot", "1:60", 5.08 },
		{ "plots/elbow.plot", "1:50", 8 }, { "plots/ring.plot", "1:50", 6 },
		{ "plots/rope-walk.plot", "20 ft", 1.27 } };
	struct svg_asked asked = SVG_AS_FITS;
	double x, y, scale;

	ck_assert(scale_read(rows[_i].scale, &asked.scale));
	garden_file(&garden, rows[_i].plot);
	garden_count(&garden);
	draw(&asked, rows[_i].plot);
	ck_assert_int_eq(sscanf(attribute(by_id("ground"), "transform"),
		"translate(%lf %lf) scale(%lf)", &x, &y, &scale), 3);
	ck_assert_double_eq_tol(scale, rows[_i].cell, 1e-9);
	ck_assert_double_eq_tol(scale * stated_scale(), (double)garden.takeoff.survey.cell /
		(double)NM_PER_MM, 1e-6);
}
END_TEST

/* ---- Words ----------------------------------------------------------------------------------- */

/* A plate behind words, which it is as large as. */
static bool is_plate(xmlNode *node)
{
	return is_element(node, "rect") && *attribute(node->parent, "fill-opacity");
}

struct plate {
	double left, top, right, bottom;
};

static struct plate plate_of(xmlNode *node)
{
	double x = number(node, "x"), y = number(node, "y");

	return (struct plate){ x, y, x + number(node, "width"), y + number(node, "height") };
}

/* And none of them is beyond the sheet. */
START_TEST(words_on_the_plan_do_not_stand_on_each_other)
{
	static struct plate plates[1 << 12];
	struct svg_asked asked = SVG_AS_FITS;
	double wide, high;
	int count = 0;

	garden_at_random((uint64_t)_i + 2000);
	asked.with = (unsigned)_i % 4;
	draw(&asked, "random.plot");
	ck_assert_int_eq(sscanf(attribute(root(), "viewBox"), "0 0 %lf %lf", &wide, &high), 2);
	for (xmlNode *node = root(); node; node = next_element(node))
		if (is_plate(node))
			plates[count++] = plate_of(node);
	ck_assert_int_gt(count, 0);
	for (int i = 0; i < count; i++) {
		const struct plate *a = &plates[i];

		ck_assert(a->left > 5 && a->top > 5 && a->right < wide - 5 && a->bottom < high - 5);
		for (int j = 0; j < i; j++)
			ck_assert_msg(a->left >= plates[j].right || plates[j].left >= a->right ||
				a->top >= plates[j].bottom || plates[j].top >= a->bottom,
				"seed %d: at %g, %g", _i, a->left, a->top);
	}
}
END_TEST

START_TEST(any_text_survives)
{
	static const char *const titles[] = { "<b>&amp; \"two\" 'three' &lt; ]]>",
		"\xc3\xa9\xe2\x82\xac \xf0\x9f\x8c\xb3 \xe6\xa2\xa8", "-- ?> <!--" };
	struct svg_asked asked = SVG_AS_FITS;
	xmlNode *title;

	garden_file(&garden, "plots/court.plot");
	block_set(&garden.plot.details.head, HEAD_TITLE,
		(struct value){ .set = true, .as.text = memory_string(titles[_i]) });
	garden_count(&garden);
	draw(&asked, "a\x01\xff<&.plot");
	check_form();
	title = xmlFirstElementChild(root());
	ck_assert(is_element(title, "title"));
	ck_assert_str_eq(content(title), titles[_i]);
	ck_assert(has_text(titles[_i]));
	ck_assert(has_text("a<01><FF><&.plot"));
}
END_TEST

/* ---- What stands on it ----------------------------------------------------------------------- */

/* Where a drawing has the datum, in mm. */
static void datum(double *x, double *y)
{
	ck_assert_int_eq(sscanf(attribute(by_id("ground"), "transform"), "translate(%lf %lf)", x,
		y), 2);
}

static double on_paper(nm length)
{
	return (double)length / stated_scale() / (double)NM_PER_MM;
}

/* Black with a white rim: those of a plain sheet. */
static bool is_post(xmlNode *node)
{
	return is_element(node, "rect") &&
		strcmp(attribute(node->parent, "fill"), "#000000") == 0 &&
		strcmp(attribute(node->parent, "stroke"), "#ffffff") == 0;
}

START_TEST(posts_stand_where_the_takeoff_has_them_with_its_numbers)
{
	static const char *const plots[] = { "plots/court.plot", "plots/ring.plot" };
	struct svg_asked asked = { .paper = PAPER_A3, .turn = AS_FITS, .sheet = 1,
		.is_plain = true };
	const struct fencing *fence;
	char words[16];
	double x, y;
	int posts = 0;

	garden_file(&garden, plots[_i]);
	garden_count(&garden);
	fence = garden.takeoff.fences.list;
	draw(&asked, plots[_i]);
	datum(&x, &y);
	for (xmlNode *node = root(); node; node = next_element(node)) {
		if (!is_post(node))
			continue;
		if (posts < fence->post_count) {
			struct plate box = plate_of(node);
			struct spot at = fence->posts[posts].at;

			ck_assert_double_eq_tol((box.left + box.right) / 2, x + on_paper(at.x),
				1e-3);
			ck_assert_double_eq_tol((box.top + box.bottom) / 2, y + on_paper(at.y),
				1e-3);
		}
		posts++;
	}
	ck_assert_int_eq(posts, fence->post_count + 1); /* and the sign */
	for (int i = 1; i <= fence->post_count; i++) {
		snprintf(words, sizeof words, "%d", i);
		ck_assert_msg(has_text(words), "no post %d", i);
	}
}
END_TEST

static int count_dashed(const char *dashes, const char *element)
{
	int count = 0;

	for (xmlNode *node = root(); node; node = next_element(node))
		count += is_element(node, element) &&
			strcmp(attribute(node->parent, "stroke-dasharray"), dashes) == 0;
	return count;
}

START_TEST(strings_and_points_are_those_of_the_set_out)
{
	struct svg_asked asked = SVG_AS_FITS;
	struct arena arena = ARENA_EMPTY;
	struct setout setout;
	char words[16];

	garden_file(&garden, "plots/rope-walk.plot");
	garden_set_out(&garden, &setout, &arena);
	asked.paper = PAPER_TABLOID;
	draw(&asked, "rope-walk.plot");
	ck_assert_int_eq(count_dashed("4,0.8", "line"), 0);
	asked.with = DRAW_STRINGS;
	draw(&asked, "rope-walk.plot");
	ck_assert_int_eq(count_dashed("4,0.8", "line"), setout.string_count + 1);
	for (int i = 1; i <= setout.corner_count; i++) {
		snprintf(words, sizeof words, "%d", i);
		ck_assert_msg(has_text(words), "no point %d", i);
	}
	arena_clear(&arena);
}
END_TEST

START_TEST(what_is_around_is_drawn_in_words)
{
	static const char *const told[] = { "water, existing, down 30 in", "water, existing",
		"power, to lay, down 18 in: Light at the sundial", "house: Number 4",
		"keep: Old pear, radius 2 ft", "keep: Garden wall", "deliveries",
		"12 ft 4 in to House corner, north", "2 1/2 in", "finish 1 in", "B1 Thyme bed",
		"The finished ground falls 1.5 % away from", "North is 30 degrees left of up.",
		"Services are drawn as somebody told:" };
	struct svg_asked asked = SVG_AS_FITS;

	garden_file(&garden, "tests/plots/drawn.plot");
	garden_count(&garden);
	asked.with = DRAW_LEVELS;
	asked.paper = PAPER_A3;
	draw(&asked, "drawn.plot");
	for (size_t i = 0; i < sizeof told / sizeof *told; i++)
		ck_assert_msg(has_text(told[i]), "%s", told[i]);
	ck_assert(!has_text("B1")); /* not a second time without its name */
	ck_assert_int_eq(count_dashed("2.4,1.2", "polyline"), 1);
}
END_TEST

/* The plan's top looks 30 degrees east of north: the arrow is turned to the left about its middle,
 * halfway between its point and its barbs. */
START_TEST(the_arrow_of_north_is_turned_about_its_middle)
{
	struct svg_asked asked = SVG_AS_FITS;
	double turn, x, y, point[2], barb[2];

	garden_file(&garden, "tests/plots/drawn.plot");
	garden_count(&garden);
	draw(&asked, "drawn.plot");
	ck_assert_int_eq(sscanf(attribute(by_id("north"), "transform"), "rotate(%lf %lf %lf)",
		&turn, &x, &y), 3);
	ck_assert_int_eq(sscanf(attribute(next_element(by_id("north")), "points"),
		"%lf,%lf %lf,%lf", &point[0], &point[1], &barb[0], &barb[1]), 4);
	ck_assert_double_eq(turn, -30);
	ck_assert_double_eq_tol(x, point[0], 1e-9);
	ck_assert_double_eq_tol(y, (point[1] + barb[1]) / 2, 1e-9);
}
END_TEST

/* The numbers are those of the laying sheets. */
START_TEST(each_side_of_a_wall_is_told_with_its_length)
{
	static const char *const sides[] = { "1: 10 ft", "2: 4 ft", "3: 7 ft", "4: 4 ft", "5: 3 ft",
		"6: 8 ft" };
	struct svg_asked asked = SVG_AS_FITS;

	garden_file(&garden, "plots/rope-walk.plot");
	garden_count(&garden);
	asked.paper = PAPER_A4;
	draw(&asked, "rope-walk.plot");
	for (size_t i = 0; i < sizeof sides / sizeof *sides; i++)
		ck_assert_msg(has_text(sides[i]), "%s", sides[i]);
}
END_TEST

/* It has no laying sheet, so no numbers. */
START_TEST(each_side_of_a_bed_without_a_wall_is_told_by_its_length)
{
	struct svg_asked asked = SVG_AS_FITS;

	garden_rectangle(&garden, 'b', 13, 7);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	draw(&asked, "garden.plot");
	ck_assert(has_text("13 ft") && has_text("7 ft"));
	ck_assert(!has_text("3"));
}
END_TEST

START_TEST(the_header_goes_from_the_tap_with_its_sleeves)
{
	static const char *const told[] = { "tap", "header of the drip lines",
		"its sleeve, laid before the base" };
	struct svg_asked asked = SVG_AS_FITS;

	garden_file(&garden, "tests/plots/watered.plot");
	garden_count(&garden);
	draw(&asked, "watered.plot");
	for (size_t i = 0; i < sizeof told / sizeof *told; i++)
		ck_assert_msg(has_text(told[i]), "%s", told[i]);
	/* each leg, and the sign that explains them; within each of four raised beds to the lines
	 * and across them, within each of two others along a side, then across */
	ck_assert_int_eq(count_dashed("0.8,0.8", "line"),
		(int)garden.takeoff.watering.legs.count + 1 + 4 * 2 + 2 * 2);
}
END_TEST

static bool is_in_pen(const xmlNode *node, const char *name, const char *value)
{
	return strcmp(attribute(node->parent, name), value) == 0;
}

/* Those of width 0.25 in the colour of water; in the sign three dots. */
START_TEST(drip_lines_are_drawn_with_a_dot_for_each_emitter)
{
	struct svg_asked asked = SVG_AS_FITS;
	int tubes = 0, dots = 0;

	garden_file(&garden, "tests/plots/watered.plot");
	garden_count(&garden);
	draw(&asked, "watered.plot");
	for (xmlNode *node = root(); node; node = next_element(node)) {
		tubes += is_element(node, "line") && is_in_pen(node, "stroke-width", "0.25") &&
			is_in_pen(node, "stroke", "#0b4fb3");
		dots += is_element(node, "circle") && is_in_pen(node, "fill", "#0b4fb3");
	}
	ck_assert_int_eq(tubes, (int)garden.takeoff.watering.lines + 1);
	ck_assert_int_eq(dots, (int)garden.takeoff.watering.emitters + 3);
	ck_assert(has_text("drip line, a dot for each emitter"));
}
END_TEST

static bool is_on_plate(xmlNode *line)
{
	double left = number(line, "x1"), right = number(line, "x2");
	double top = number(line, "y1"), bottom = number(line, "y2");

	for (xmlNode *node = root(); node; node = next_element(node)) {
		struct plate plate;

		if (!is_plate(node))
			continue;
		plate = plate_of(node);
		if (fmin(left, right) < plate.right && fmax(left, right) > plate.left &&
			fmin(top, bottom) < plate.bottom && fmax(top, bottom) > plate.top)
			return true;
	}
	return false;
}

/* Where words on the plan are crowded. */
START_TEST(no_words_stand_on_the_header)
{
	struct svg_asked asked = SVG_AS_FITS;
	int legs = 0;

	garden_file(&garden, "plots/growing-court.plot");
	garden_count(&garden);
	asked.paper = _i;
	draw(&asked, "growing-court.plot");
	for (xmlNode *node = root(); node; node = next_element(node)) {
		if (!is_element(node, "line") || strcmp(attribute(node->parent, "stroke-dasharray"),
			"0.8,0.8") != 0)
			continue;
		ck_assert_msg(!is_on_plate(node), "%s,%s", attribute(node, "x1"),
			attribute(node, "y1"));
		legs++;
	}
	ck_assert_int_gt(legs, 1);
}
END_TEST

/* ---- Sheets and refusals --------------------------------------------------------------------- */

START_TEST(each_way_of_building_a_wall_has_one_section)
{
	struct svg_asked asked = SVG_AS_FITS;
	int sections = 0, sheets;

	garden_file(&garden, "plots/snags.plot");
	garden_count(&garden);
	sheets = svg_sheets(&garden.plot, &garden.takeoff, &asked);
	ck_assert_int_eq(sheets, 2);
	for (asked.sheet = 1; asked.sheet <= sheets; asked.sheet++) {
		draw(&asked, "snags.plot");
		for (xmlNode *node = root(); node; node = next_element(node))
			sections += is_element(node, "text") &&
				strncmp(content(node), "Section of the wall", 19) == 0;
	}
	ck_assert_int_eq(sections, garden.takeoff.walls.count); /* each bed has a letter */
}
END_TEST

START_TEST(what_does_not_fit_is_refused_with_what_it_takes)
{
	static const struct {
		struct svg_asked asked;
		const char *why;
	} rows[] = {
		{ { PAPER_LETTER, TURN_LANDSCAPE, 12, 1, 0, false }, "the plan is too large for "
			"Letter landscape at 1:12: it takes 16 in x 13 in on paper" },
		{ { AS_FITS, AS_FITS, 0, 3, 0, false }, "the drawing has 1 sheet, so there is no "
			"sheet 3" },
	};
	struct text why = TEXT_EMPTY;

	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	ck_assert(!svg_fits(&garden.plot, &garden.takeoff, &rows[_i].asked, &why));
	ck_assert_msg(strncmp(why.bytes, rows[_i].why, strlen(rows[_i].why)) == 0, "%s", why.bytes);
	text_fini(&why);
}
END_TEST

START_TEST(a_drawing_can_be_stopped)
{
	const struct svg_asked asked = SVG_AS_FITS;
	struct counting_sink whole = counting_sink();
	struct stopper stopper;

	garden_file(&garden, "plots/great-court.plot");
	garden_count(&garden);
	stopper_begin(&stopper, 0);
	report_svg(&whole.sink, &garden.plot, &garden.takeoff, "great-court.plot", &asked);
	stopper_end();
	ck_assert_int_gt(stopper.asks, 1000);
	for (int64_t at = 1; at < stopper.asks; at += stopper.asks / 20) {
		struct counting_sink some = counting_sink();
		struct stopper halt;

		stopper_begin(&halt, at);
		report_svg(&some.sink, &garden.plot, &garden.takeoff, "great-court.plot", &asked);
		stopper_end();
		ck_assert_msg(some.length < whole.length, "at %lld", (long long)at);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("svg, read");
	TCase *form = suite_case(suite, "form"), *shapes = suite_case(suite, "shapes");
	TCase *words = suite_case(suite, "words"), *marks = suite_case(suite, "marks");
	TCase *sheets = suite_case(suite, "sheets");
	TCase *cases[] = { form, shapes, words, marks, sheets };

	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		tcase_add_checked_fixture(cases[i], setup, teardown);
	tcase_add_loop_test(form, every_sample_is_drawn_in_known_elements_on_every_paper, 0,
		6 * PAPERS);
	tcase_add_test(form, a_plot_of_everything_is_drawn_byte_by_byte);
	tcase_add_test(form, a_small_plot_is_drawn_byte_by_byte);
	tcase_add_loop_test(form, any_plot_is_drawn_in_known_elements, 0, runner_count(30, 1000));
	tcase_add_loop_test(shapes, shapes_are_the_regions_of_the_takeoff, 0,
		runner_count(20, 400));
	tcase_add_loop_test(shapes, a_cell_is_as_long_as_the_scale_says, 0, 5);
	tcase_add_loop_test(words, words_on_the_plan_do_not_stand_on_each_other, 0,
		runner_count(20, 400));
	tcase_add_loop_test(words, any_text_survives, 0, 3);
	tcase_add_loop_test(marks, posts_stand_where_the_takeoff_has_them_with_its_numbers, 0, 2);
	tcase_add_test(marks, strings_and_points_are_those_of_the_set_out);
	tcase_add_test(marks, what_is_around_is_drawn_in_words);
	tcase_add_test(marks, the_arrow_of_north_is_turned_about_its_middle);
	tcase_add_test(marks, each_side_of_a_wall_is_told_with_its_length);
	tcase_add_test(marks, each_side_of_a_bed_without_a_wall_is_told_by_its_length);
	tcase_add_test(marks, the_header_goes_from_the_tap_with_its_sleeves);
	tcase_add_test(marks, drip_lines_are_drawn_with_a_dot_for_each_emitter);
	tcase_add_loop_test(marks, no_words_stand_on_the_header, 0, PAPERS);
	tcase_add_test(sheets, each_way_of_building_a_wall_has_one_section);
	tcase_add_loop_test(sheets, what_does_not_fit_is_refused_with_what_it_takes, 0, 2);
	tcase_add_test(sheets, a_drawing_can_be_stopped);
	return suite;
}
