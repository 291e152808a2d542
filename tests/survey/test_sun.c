/* Where the sun stands and when it rises, against almanacs and another library. */
#include "survey/sun.h"
#include "support/runner.h"

#include <libnova/julian_day.h>
#include <libnova/solar.h>
#include <math.h>
#include <stdlib.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

/* The moment, as a Julian day, of an hour of universal time. */
static double moment(struct date date, double hour)
{
	return date_julian(date) + (hour - 12) / 24;
}

/* The day at a place: its noon by the mean sun, a few minutes off that of the true one. */
static struct sun_day day_at(double latitude, double longitude, struct date date)
{
	return (struct sun_day){ latitude, date_julian(date) - longitude / 360 };
}

/* ---- Height and azimuth ---------------------------------------------------------------------- */

/* Computed with PyEphem 4.1.4 (Debian's python3-ephem 4.1.4-2; its sun is that of the planetary
 * theory VSOP87), pressure 0: height and azimuth of the disc's middle, without air, seen from the
 * ground (the parallax, 0.0025 at most, is in them); declination and equation of time by the NOAA
 * calculator's equations. */
static const struct {
	double latitude, longitude;
	struct date date;
	double hour, height, azimuth, declination, equation;
} positions[] = {
	{ 0, 0, { 2024, 3, 20 }, 9, 43.1616, 89.8668, 0.0976, -7.328 },
	{ 0, 0, { 2024, 6, 20 }, 8, 26.9309, 63.5041, 23.4376, -1.671 },
	{ 0, 0, { 2024, 6, 20 }, 17, 14.1337, 294.2161, 23.4385, -1.753 },
	{ 0, 0, { 2024, 9, 22 }, 15, 43.1186, 269.9497, -0.0386, 7.477 },
	{ 0, 0, { 2024, 12, 21 }, 12, 66.5570, 180.9851, -23.4386, 1.678 },
	{ 40, -105, { 2024, 3, 20 }, 19, 50.2261, 177.1770, 0.2623, -7.204 },
	{ 40, -105, { 2024, 6, 20 }, 19, 73.4333, 178.5772, 23.4386, -1.771 },
	{ 40, -105, { 2024, 9, 22 }, 19, 49.8597, 182.9392, -0.1035, 7.535 },
	{ 40, -105, { 2024, 12, 21 }, 17, 20.8187, 150.9986, -23.4382, 1.575 },
	{ 51.5, 0, { 2024, 3, 20 }, 9, 25.2864, 126.2239, 0.0976, -7.328 },
	{ 51.5, 0, { 2024, 6, 20 }, 8, 36.3857, 97.6295, 23.4376, -1.671 },
	{ 51.5, 0, { 2024, 6, 20 }, 17, 27.5996, 273.6540, 23.4385, -1.753 },
	{ 51.5, 0, { 2024, 9, 22 }, 15, 25.1490, 233.7429, -0.0386, 7.477 },
	{ 51.5, 0, { 2024, 12, 21 }, 12, 15.0583, 180.4058, -23.4386, 1.678 },
	{ 65, 25, { 2024, 3, 20 }, 10, 24.9216, 172.4609, 0.1141, -7.315 },
	{ 65, 25, { 2024, 6, 20 }, 10, 48.2863, 172.5138, 23.4379, -1.689 },
	{ 65, 25, { 2024, 9, 22 }, 10, 25.0021, 176.5362, 0.0425, 7.404 },
	{ 65, 25, { 2024, 12, 21 }, 8, -2.3604, 148.6140, -23.4386, 1.761 },
	{ -34, 151, { 2024, 3, 19 }, 23, 35.3034, 61.5799, -0.0671, -7.451 },
	{ -34, 151, { 2024, 6, 19 }, 22, 9.4871, 53.1926, 23.4355, -1.580 },
	{ -34, 151, { 2024, 6, 20 }, 7, -1.8968, 297.2398, 23.4375, -1.662 },
	{ -34, 151, { 2024, 9, 22 }, 5, 33.7223, 296.9639, 0.1236, 7.330 },
	{ -34, 151, { 2024, 12, 21 }, 2, 79.3587, 352.6326, -23.4382, 1.885 },
	{ -45, 170, { 2024, 3, 20 }, 1, 44.9469, 355.5629, -0.0341, -7.427 },
	{ -45, 170, { 2024, 6, 20 }, 1, 21.4333, 355.4675, 23.4363, -1.608 },
	{ -45, 170, { 2024, 9, 22 }, 1, 44.4044, 350.4202, 0.1884, 7.271 },
	{ -45, 170, { 2024, 12, 20 }, 23, 60.6413, 50.9182, -23.4379, 1.947 },
	{ 28, -81, { 2024, 3, 20 }, 14, 32.3445, 109.4229, 0.1800, -7.266 },
	{ 28, -81, { 2024, 6, 20 }, 13, 30.7075, 77.9869, 23.4382, -1.716 },
	{ 28, -81, { 2024, 6, 20 }, 22, 28.8771, 282.7797, 23.4386, -1.798 },
	{ 28, -81, { 2024, 9, 22 }, 20, 41.7906, 241.4191, -0.1197, 7.550 },
	{ 28, -81, { 2024, 12, 21 }, 17, 38.2774, 173.4524, -23.4382, 1.575 },
	{ 20, -156, { 2024, 3, 20 }, 22, 68.8827, 157.8814, 0.3117, -7.167 },
	{ 20, -156, { 2024, 6, 20 }, 22, 83.0937, 58.9837, 23.4386, -1.798 },
	{ 20, -156, { 2024, 9, 22 }, 22, 69.4537, 168.2603, -0.1521, 7.579 },
	{ 20, -156, { 2024, 12, 21 }, 20, 34.3906, 139.6492, -23.4378, 1.513 },
	{ 39.742476, -105.1786, { 2003, 10, 17 }, 19.5083, 39.8720, 194.3402, -9.3158, 14.647 },
	{ 51.5074, -0.1278, { 2025, 2, 14 }, 10.5, 21.7428, 152.4386, -12.8573, -14.158 },
	{ -33.4489, -70.6693, { 2025, 8, 10 }, 18, 38.2874, 337.6797, 15.3252, -5.304 },
	{ -1.2921, 36.8219, { 2025, 11, 3 }, 6, 39.6488, 108.7122, -15.1489, 16.492 },
	{ 35.6762, 139.6503, { 2025, 4, 30 }, 23, 37.2803, 98.2871, 15.0783, 2.863 },
	{ 45, -90, { 2024, 2, 29 }, 18, 37.3470, 176.1500, -7.5760, -12.367 },
	{ -18, -179.5, { 2025, 3, 21 }, 23.5, 69.4819, 25.6592, 0.6362, -6.921 },
	{ 90, 0, { 2025, 6, 21 }, 12, 23.4356, 179.5357, 23.4380, -1.875 },
};

START_TEST(the_sun_stands_where_a_planetary_theory_has_it)
{
	struct sun sun = sun_at(moment(positions[_i].date, positions[_i].hour));
	struct sun_day day = { positions[_i].latitude, 0 };
	double solar = positions[_i].hour + positions[_i].longitude / 15 + sun.equation / 60;
	struct sun_place place;
	double turned;

	day.noon = moment(positions[_i].date, positions[_i].hour) - (solar - 12) / 24;
	place = sun_place(&day, solar);
	turned = remainder(place.azimuth - positions[_i].azimuth, 360) *
		cos(place.height * 3.14159265 / 180);
	ck_assert_double_eq_tol(place.height, positions[_i].height, 0.02);
	ck_assert_double_eq_tol(turned, 0, 0.02);
	ck_assert_double_eq_tol(sun.declination, positions[_i].declination, 0.0002);
	ck_assert_double_eq_tol(sun.equation, positions[_i].equation, 0.002);
}
END_TEST

/* Reda and Andreas, Solar Position Algorithm for Solar Radiation Applications, National Renewable
 * Energy Laboratory, NREL/TP-560-34302, 2003, revised 2008, the worked example: 2003-10-17
 * 19:30:30 UT, declination -9.31434, height without air 39.872046, azimuth 194.34024. */
START_TEST(the_sun_stands_where_a_worked_example_has_it)
{
	const struct date date = { 2003, 10, 17 };
	const double hour = 19 + 30.5 / 60;
	struct sun sun = sun_at(moment(date, hour));
	double solar = hour - 105.1786 / 15 + sun.equation / 60;
	struct sun_day day = { 39.742476, moment(date, hour) - (solar - 12) / 24 };
	struct sun_place place = sun_place(&day, solar);

	ck_assert_double_eq_tol(sun.declination, -9.31434, 0.01);
	ck_assert_double_eq_tol(place.height, 39.872046, 0.02);
	ck_assert_double_eq_tol(place.azimuth, 194.34024, 0.02);
}
END_TEST

/* Jean Meeus, Astronomical Algorithms, 2nd ed., 1998: 22.2, 25.2 to 25.4, what follows them on the
 * center, node and apparent longitude, and 28.3. By powers of Julian centuries since 2000. */
static const double mean_longitude[] = { 280.46646, 36000.76983, 0.0003032 };
static const double mean_anomaly[] = { 357.52911, 35999.05029, -0.0001537 };
static const double eccentricity[] = { 0.016708634, -0.000042037, -0.0000001267 };
static const double moon_node[] = { 125.04, -1934.136 };
static const double centers[3][3] = { { 1.914602, -0.004817, -0.000014 },
	{ 0.019993, -0.000101, 0 }, { 0.000289, 0, 0 } };
/* In seconds of arc. */
static const double tilt[] = { 23 * 3600 + 26 * 60 + 21.448, -46.8150, -0.00059, 0.001813 };

static double powers(const double *terms, int count, double t)
{
	double sum = 0;

	for (int i = 0; i < count; i++)
		sum += terms[i] * pow(t, i);
	return sum;
}
#define POWERS(terms, t) powers((terms), COUNT(terms), (t))

static struct sun sun_by_series(double t)
{
	const double radian = acos(-1) / 180;
	double l = POWERS(mean_longitude, t) * radian, m = POWERS(mean_anomaly, t) * radian;
	double e = POWERS(eccentricity, t), node = POWERS(moon_node, t) * radian, longitude = l;
	double oblique = (POWERS(tilt, t) / 3600 + 0.00256 * cos(node)) * radian;
	double y = (1 - cos(oblique)) / (1 + cos(oblique)), terms[5];

	for (int i = 0; i < 3; i++)
		longitude += POWERS(centers[i], t) * sin((i + 1) * m) * radian;
	longitude -= (0.00569 + 0.00478 * sin(node)) * radian;
	terms[0] = y * sin(2 * l);
	terms[1] = -2 * e * sin(m);
	terms[2] = 4 * e * y * sin(m) * cos(2 * l);
	terms[3] = -0.5 * y * y * sin(4 * l);
	terms[4] = -1.25 * e * e * sin(2 * m);
	return (struct sun){ asin(sin(oblique) * sin(longitude)) / radian,
		(terms[0] + terms[1] + terms[2] + terms[3] + terms[4]) / radian * 4 };
}

/* Over four thousand years each term tells. */
START_TEST(term_by_term_the_sun_goes_as_it_is_published)
{
	for (int i = -54; i <= 54; i++) {
		double t = 0.37 * i;
		struct sun sun = sun_at(2451545 + 36525 * t), series = sun_by_series(t);

		ck_assert_double_eq_tol(sun.declination, series.declination, 1e-6);
		ck_assert_double_eq_tol(sun.equation, series.equation, 1e-6);
	}
}
END_TEST

/* Apparent sun at 0 h, U.S. Naval Observatory's almanac: declination in degrees, equation of time
 * in minutes. And Jean Meeus, Astronomical Algorithms, 2nd ed., 1998, examples 25.a and 28.a:
 * 1992-10-13, declination -7.78507, equation of time 13 min 42.6 s. */
static const struct {
	struct date date;
	double declination, equation;
} almanac[] = {
	{ { 2007, 9, 25 }, -(37 / 60.0 + 7.31 / 3600), 8 + 2.5 / 60 },
	{ { 2007, 10, 1 }, -(2 + 57 / 60.0 + 8.86 / 3600), 10 + 4.6 / 60 },
	{ { 2007, 10, 6 }, -(4 + 53 / 60.0 + 6.07 / 3600), 11 + 38.7 / 60 },
	{ { 1992, 10, 13 }, -7.78507, 13 + 42.6 / 60 },
};

START_TEST(declination_and_equation_of_time_are_those_of_almanacs)
{
	struct sun sun = sun_at(moment(almanac[_i].date, 0));

	ck_assert_double_eq_tol(sun.declination, almanac[_i].declination, 0.01);
	ck_assert_double_eq_tol(sun.equation, almanac[_i].equation, 0.05);
}
END_TEST

/* ---- Rise and set ---------------------------------------------------------------------------- */

/* U.S. Naval Observatory, tables of rise and set for one year, to the minute: Fredonia 2023, San
 * Francisco 2012, Atlanta 2007, Toronto 2001, each in the time of the zone named. */
static const struct {
	double latitude, longitude;
	struct date date;
	int zone, rise, set; /* zone: hours; rise, set: 743 is 7:43 */
} almanac_times[] = {
	{ 36.95000, -112.51667, { 2023, 1, 1 }, -7, 743, 1724 },
	{ 36.95000, -112.51667, { 2023, 3, 20 }, -7, 634, 1842 },
	{ 36.95000, -112.51667, { 2023, 5, 15 }, -7, 522, 1931 },
	{ 36.95000, -112.51667, { 2023, 7, 15 }, -7, 522, 1949 },
	{ 36.95000, -112.51667, { 2023, 9, 22 }, -7, 618, 1827 },
	{ 36.95000, -112.51667, { 2023, 11, 15 }, -7, 708, 1721 },
	{ 37.76667, -122.43333, { 2012, 1, 1 }, -8, 725, 1701 },
	{ 37.76667, -122.43333, { 2012, 3, 20 }, -8, 612, 1822 },
	{ 37.76667, -122.43333, { 2012, 5, 15 }, -8, 459, 1913 },
	{ 37.76667, -122.43333, { 2012, 7, 15 }, -8, 500, 1931 },
	{ 37.76667, -122.43333, { 2012, 9, 22 }, -8, 558, 1806 },
	{ 37.76667, -122.43333, { 2012, 11, 15 }, -8, 651, 1658 },
	{ 33.76667, -84.41667, { 2007, 1, 1 }, -5, 743, 1740 },
	{ 33.76667, -84.41667, { 2007, 3, 20 }, -5, 642, 1849 },
	{ 33.76667, -84.41667, { 2007, 5, 15 }, -5, 537, 1931 },
	{ 33.76667, -84.41667, { 2007, 7, 15 }, -5, 538, 1949 },
	{ 33.76667, -84.41667, { 2007, 9, 22 }, -5, 626, 1835 },
	{ 33.76667, -84.41667, { 2007, 11, 15 }, -5, 709, 1735 },
	{ 43.66667, -79.41667, { 2001, 4, 1 }, -4, 659, 1945 },
	{ 43.66667, -79.41667, { 2001, 4, 20 }, -4, 627, 2007 },
};

/* Minutes by the clock of solar hours. */
static double clock_minutes(const struct sun_day *day, double hour, double longitude, int zone)
{
	double equation = sun_at(day->noon + (hour - 12) / 24).equation;

	return hour * 60 - equation - 4 * longitude + zone * 60;
}

static double minutes(int printed)
{
	int hours = printed / 100;

	return hours * 60 + printed % 100;
}

START_TEST(the_sun_rises_and_sets_when_an_almanac_says)
{
	double longitude = almanac_times[_i].longitude;
	struct sun_day day = day_at(almanac_times[_i].latitude, longitude, almanac_times[_i].date);
	struct sun_times times = sun_times(&day, SUN_SET_HEIGHT);
	int zone = almanac_times[_i].zone;

	ck_assert_double_eq_tol(clock_minutes(&day, times.rise, longitude, zone),
		minutes(almanac_times[_i].rise), 1);
	ck_assert_double_eq_tol(clock_minutes(&day, times.set, longitude, zone),
		minutes(almanac_times[_i].set), 1);
}
END_TEST

/* Computed with PyEphem 4.1.4 (Debian's python3-ephem), pressure 0: hours in which the middle of
 * the disc is above 0, above -0.8333, above 5 and above 10 degrees; the height at noon. */
static const struct {
	double latitude, longitude;
	struct date date;
	double noon, above_0, above_set, above_5, above_10;
} lengths[] = {
	{ 0, 0, { 2024, 3, 20 }, 89.851, 11.9972, 12.1083, 11.3307, 10.6641 },
	{ 0, 0, { 2024, 12, 21 }, 66.561, 12.0038, 12.1249, 11.2767, 10.5486 },
	{ 20, 0, { 2024, 12, 21 }, 46.560, 10.7928, 10.9232, 10.0026, 9.1959 },
	{ 30, -90, { 2025, 10, 15 }, 51.196, 11.3140, 11.4442, 10.5280, 9.7320 },
	{ 40, -105, { 2024, 6, 20 }, 73.438, 14.8460, 15.0165, 13.8513, 12.8951 },
	{ 40, -105, { 2024, 12, 21 }, 26.560, 9.1584, 9.3275, 8.1097, 6.9819 },
	{ 45, -90, { 2025, 2, 14 }, 32.250, 10.2557, 10.4207, 9.2462, 8.1916 },
	{ 45, -90, { 2025, 11, 3 }, 29.697, 9.8825, 10.0514, 8.8444, 7.7485 },
	{ 51.5, 0, { 2024, 6, 20 }, 61.937, 16.4051, 16.6395, 15.0822, 13.8607 },
	{ 60, 25, { 2025, 6, 21 }, 53.437, 18.4905, 18.8680, 16.5506, 14.9163 },
	{ 65, 25, { 2024, 3, 20 }, 25.119, 12.0314, 12.2944, 10.4456, 8.8006 },
	{ 65, 25, { 2024, 12, 21 }, 1.559, 2.8799, 3.5791, 0.0000, 0.0000 },
	{ 67, 25, { 2025, 12, 21 }, -0.441, 0.0000, 1.4969, 0.0000, 0.0000 },
	{ -34, 151, { 2024, 12, 21 }, 79.438, 14.2715, 14.4247, 13.3700, 12.4941 },
	{ -45, 170, { 2024, 6, 20 }, 21.562, 8.5756, 8.7646, 7.3874, 6.0645 },
	{ -55, -68, { 2025, 12, 21 }, 58.437, 17.1055, 17.3783, 15.6006, 14.2454 },
};

static double length(const struct sun_day *day, double height)
{
	struct sun_times times = sun_times(day, height);

	return times.set - times.rise;
}

/* Within a minute; where the sun goes up at a slant of a degree an hour, within four. */
START_TEST(days_are_as_long_as_a_planetary_theory_has_them)
{
	struct sun_day day = day_at(lengths[_i].latitude, lengths[_i].longitude,
		lengths[_i].date);
	double close = lengths[_i].noon < 2 ? 4 / 60.0 : 1 / 60.0;

	ck_assert_double_eq_tol(sun_place(&day, 12).height, lengths[_i].noon, 0.02);
	ck_assert_double_eq_tol(length(&day, 0), lengths[_i].above_0, close);
	ck_assert_double_eq_tol(length(&day, SUN_SET_HEIGHT), lengths[_i].above_set, close);
	ck_assert_double_eq_tol(length(&day, 5), lengths[_i].above_5, close);
	ck_assert_double_eq_tol(length(&day, 10), lengths[_i].above_10, close);
}
END_TEST

/* libnova's sun is that of another epoch, 0.07 degrees off at most: 2 minutes up to latitude 57. */
START_TEST(days_are_as_long_as_libnova_has_them)
{
	for (int month = 1; month <= 12; month++) {
		struct ln_lnlat_posn observer = { .lat = _i };
		struct date date = { 2026, month, 21 };
		struct sun_day day = sun_day_of(_i, date);
		struct ln_rst_time times;

		ck_assert_int_eq(ln_get_solar_rst_horizon(date_julian(date) - 0.5, &observer,
			SUN_SET_HEIGHT, &times), 0);
		ck_assert_double_eq_tol(length(&day, SUN_SET_HEIGHT),
			(times.set - times.rise) * 24, 2 / 60.0);
	}
}
END_TEST

START_TEST(the_sun_is_at_the_height_asked_for_when_it_rises_and_sets)
{
	for (int latitude = -66; latitude <= 66; latitude += 3) {
		for (int month = 1; month <= 12; month++) {
			struct sun_day day = sun_day_of(latitude, (struct date){ 2026, month,
				21 });
			struct sun_times times = sun_times(&day, 0);

			if (times.rise <= 0 || times.rise >= 12)
				continue;
			ck_assert_double_eq_tol(sun_place(&day, times.rise).height, 0, 0.002);
			ck_assert_double_eq_tol(sun_place(&day, times.set).height, 0, 0.002);
			ck_assert(sun_place(&day, times.rise).azimuth < 180);
			ck_assert(sun_place(&day, times.set).azimuth > 180);
		}
	}
}
END_TEST

START_TEST(where_the_sun_never_rises_or_never_sets_a_day_is_none_or_whole)
{
	struct sun_day winter = sun_day_of(70, (struct date){ 2026, 12, 21 });
	struct sun_day summer = sun_day_of(70, (struct date){ 2026, 6, 21 });

	ck_assert_double_eq(length(&winter, 0), 0);
	ck_assert_double_eq(sun_times(&winter, 0).rise, 12);
	ck_assert_double_eq(length(&summer, 0), 24);
	ck_assert_double_eq(sun_times(&summer, 0).rise, 0);
}
END_TEST

/* ---- Dials ----------------------------------------------------------------------------------- */

/* Degrees and minutes of hour lines at latitude 40, as books on dials print them; the values are
 * from memory, their source not noted. */
START_TEST(hour_lines_of_a_dial_are_those_of_a_printed_table)
{
	static const double lines[] = { 0, 9 + 46 / 60.0, 20 + 22 / 60.0, 32 + 44 / 60.0,
		48 + 4 / 60.0, 67 + 22 / 60.0, 90 };

	for (int i = 0; i < COUNT(lines); i++) {
		ck_assert_double_eq_tol(sun_dial_angle(40, 12 + i), lines[i], 0.01);
		ck_assert_double_eq_tol(sun_dial_angle(40, 12 - i), -lines[i], 0.01);
		ck_assert_double_eq_tol(sun_dial_angle(-40, 12 + i), lines[i], 0.01);
	}
}
END_TEST

/* The shadow of the end of a gnomon of length 1 that leans to the pole, in degrees from the way it
 * leans, towards the afternoon positive. */
static double shadow_angle(double latitude, const struct sun_place *sun)
{
	double radians = 3.14159265358979 / 180, lean = latitude < 0 ? 180 : 0;
	double up = sin(fabs(latitude) * radians), out = cos(fabs(latitude) * radians);
	double reach = up / tan(sun->height * radians);
	double turned = (sun->azimuth + 180 - lean) * radians;
	double along = out + reach * cos(turned), across = reach * sin(turned);

	return atan2(latitude < 0 ? -across : across, along) / radians;
}

/* On any day of the year: that is what the gnomon leans for. */
START_TEST(a_gnomon_that_leans_to_the_pole_throws_its_shadow_on_the_hour_lines)
{
	for (int latitude = -66; latitude <= 66; latitude += 4) {
		for (int step = 0; step < 12 * 24; step++) {
			struct sun_day day = sun_day_of(latitude,
				(struct date){ 2026, 1 + step % 12, 21 });
			int whole = step / 12;
			double hour = whole + 0.25;
			struct sun_place place = sun_place(&day, hour);

			if (place.height < 1)
				continue;
			ck_assert_double_eq_tol(shadow_angle(latitude, &place),
				sun_dial_angle(latitude, hour), 1e-6);
		}
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sun");
	TCase *places = suite_case(suite, "places");
	TCase *times = suite_case(suite, "times");
	TCase *dials = suite_case(suite, "dials");

	tcase_add_loop_test(places, the_sun_stands_where_a_planetary_theory_has_it, 0,
		COUNT(positions));
	tcase_add_test(places, the_sun_stands_where_a_worked_example_has_it);
	tcase_add_test(places, term_by_term_the_sun_goes_as_it_is_published);
	tcase_add_loop_test(places, declination_and_equation_of_time_are_those_of_almanacs, 0,
		COUNT(almanac));
	tcase_add_loop_test(times, the_sun_rises_and_sets_when_an_almanac_says, 0,
		COUNT(almanac_times));
	tcase_add_loop_test(times, days_are_as_long_as_a_planetary_theory_has_them, 0,
		COUNT(lengths));
	tcase_add_loop_test(times, days_are_as_long_as_libnova_has_them, -57, 58);
	tcase_add_test(times, the_sun_is_at_the_height_asked_for_when_it_rises_and_sets);
	tcase_add_test(times, where_the_sun_never_rises_or_never_sets_a_day_is_none_or_whole);
	tcase_add_test(dials, hour_lines_of_a_dial_are_those_of_a_printed_table);
	tcase_add_test(dials,
		a_gnomon_that_leans_to_the_pole_throws_its_shadow_on_the_hour_lines);
	return suite;
}
