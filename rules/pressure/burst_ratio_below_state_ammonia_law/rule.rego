# METADATA
# title: An ammonia hose bursts too close to its working pressure for state law
# description: |
#   California wants a safety factor of five on ammonia hose. It also speaks of the low-pressure side,
#   where the federal rule fixes only the burst pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "regime=8 CCR 510"]
#   needs: [hoses.burst_ratio_permille]
#   message: >-
#     {part} bursts at {have_ratio_permille} times its working pressure; the state law asks for
#     {need_ratio_permille} times
#   action: "Fit an ammonia hose whose burst pressure is at least five times its working pressure."
#   basis:
#     - document: 8 CCR 510
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
package rules.pressure.burst_ratio_below_state_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_ratio_permille": h.burst_ratio_permille,
	"need_ratio_permille": _least,
} if {
	"8 CCR 510" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.burst_ratio_permille < _least
}

# A safety factor of 5.
_least := 5000
