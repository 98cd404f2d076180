# METADATA
# title: The pressure test of a hose is older than the site allows
# description: |
#   The site sets one longest time between pressure tests for all its hoses. A shorter one in law, or
#   from the maker, counts as before.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.days_since_test]
#   message: "{part} was pressure-tested {have_days} ago; the site allows {need_days}"
#   action: "Have the hose tested before it is used."
#   basis:
#     - document: the site's own limit
#       edition: "limits.yaml"
#       clause: test_interval_days
#       standing: site
package site.inspection.test_older_than_site_allows

report contains {"subject": h.id, "part": h.id, "have_days": h.days_since_test, "need_days": longest} if {
	longest := data.site.limits.test_interval_days
	some h in input.hoses
	h.days_since_test > longest
}
