# METADATA
# title: A stationary ammonia container is rated below what the law asks
# description: |
#   The US ammonia rule wants 250 psig for a stationary container that is not refrigerated, which stands
#   above the vapour pressure of a hot summer day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [holds_liquid, "regime=29 CFR 1910.111"]
#   needs: [vessels.rated_kpa]
#   absent: [vessels.kind]
#   message: "{vessel} is rated {have_kpa}; the ammonia rule asks for {need_kpa}"
#   action: >-
#     Do not store ammonia in this vessel. Use one built for it, or refrigerate under the rules for that.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(c)(1)"
#       standing: published
package rules.pressure.ammonia_container_below_law

report contains {"subject": v.id, "vessel": v.id, "have_kpa": v.rated_kpa, "need_kpa": _least} if {
	"29 CFR 1910.111" in input.line.regimes
	some v in input.vessels
	v.holds_liquid
	v.kind in {"pressure-vessel", "tank", "tanker"}
	v.rated_kpa < _least
}

# 250 psig = 1723.7 kPa, rounded down like the rating it is compared with.
_least := 1723
