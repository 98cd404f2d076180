// Package units reads, converts and prints the quantities of a line sheet.
//
// Every quantity is its own type holding SI. Gauge pressure, absolute pressure and
// pressure difference are three types, as are temperature and temperature difference,
// because adding or comparing across them is the commonest way to misjudge a line.
//
// Conversion factors are those of the SI Brochure, 9th edition (2019), and NIST SP 811
// (2008), Appendix B; both recalled. They are exact unless a comment says otherwise.
package units
