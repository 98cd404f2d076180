# METADATA
# title: An ammonia hose bursts below what state law asks
# description: |
#   Washington fixes a least burst pressure for every ammonia hose that is under the pressure of the
#   tank.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "regime=WAC 296-307-40023|WAC 296-826-40010"]
#   needs: [hoses.burst_kpa]
#   message: "{part} bursts at {have_kpa}; {law} asks for {need_kpa} on ammonia under tank pressure"
#   action: "Fit a hose made and marked for anhydrous ammonia with at least this burst pressure."
#   basis:
#     - document: WAC 296-307-40023
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
#     - document: WAC 296-826-40010
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
package rules.pressure.burst_below_state_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"law": law,
	"have_kpa": h.burst_kpa,
	"need_kpa": _least,
} if {
	some law in {"WAC 296-307-40023", "WAC 296-826-40010"}
	law in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.burst_kpa < _least
}

# 1750 psig = 12065.8 kPa, rounded down like the figure it is compared with.
_least := 12065
