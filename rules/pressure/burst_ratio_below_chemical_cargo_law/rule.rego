# METADATA
# title: A chemical cargo hose bursts too close to its working pressure for ship law
# description: |
#   The US rule for chemical cargo ships keeps the working pressure at a fifth of the burst pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.burst_ratio_permille]
#   message: >-
#     {part} bursts at {have_ratio_permille} times its working pressure; the ship rule asks for
#     {need_ratio_permille} times
#   action: "Fit a cargo hose whose burst pressure is at least five times its working pressure."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "working pressure"
#       standing: published
package rules.pressure.burst_ratio_below_chemical_cargo_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_ratio_permille": h.burst_ratio_permille,
	"need_ratio_permille": _least,
} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses
	h.burst_ratio_permille < _least
}

# The working pressure at most 20 % of the burst pressure.
_least := 5000
