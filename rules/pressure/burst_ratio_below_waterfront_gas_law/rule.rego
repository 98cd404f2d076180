# METADATA
# title: A waterfront gas hose bursts too close to its working pressure
# description: |
#   The US rule for liquefied hazardous gas at the waterfront wants a burst pressure of five times the
#   working pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_liquefied_gas, "regime=33 CFR 127.1102"]
#   needs: [hoses.burst_ratio_permille]
#   message: >-
#     {part} bursts at {have_ratio_permille} times its working pressure; the law asks for
#     {need_ratio_permille} times
#   action: "Fit a hose whose burst pressure is at least five times its working pressure."
#   basis:
#     - document: 33 CFR 127.1102
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.pressure.burst_ratio_below_waterfront_gas_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_ratio_permille": h.burst_ratio_permille,
	"need_ratio_permille": _least,
} if {
	"33 CFR 127.1102" in input.line.regimes
	some h in input.hoses
	h.carries_liquefied_gas
	h.burst_ratio_permille < _least
}

# Burst at least five times the working pressure.
_least := 5000
